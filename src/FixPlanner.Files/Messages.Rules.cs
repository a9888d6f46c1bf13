using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files;

/// <summary>The pack: FP20xx files and layers, FP21xx figures, FP22xx ids, FP23xx how rules hang together.</summary>
internal static partial class Messages
{
    public static Problem NoRuleFolder(string folder, Exception failure) => Error(
        "FP2001",
        Place.Whole(folder),
        FileFailure.IsMissing(failure) ? "there is no such folder of rules" : $"the folder of rules cannot be read ({failure.Message})",
        "without the rules nothing can be said about a car",
        "check the name of the folder");

    public static Problem EmptyRuleFolder(string folder) => Error(
        "FP2001",
        Place.Whole(folder),
        "there are no rules in this folder",
        "a folder of rules holds files that end in .yaml, in the layout of the shipped pack",
        "name the folder that holds pack.yaml, zones and gates, or that replaces some of them");

    public static Problem FileOutOfPlace(string file, string path) => Error(
        "FP2002",
        Place.Whole(file),
        $"nothing is read from a file at {Quoted(path)}",
        "what a file holds is known by its folder and name, so this one would be lost",
        "move it, for example to zones/roof/fixes/ or gates/, and let its name end in .yaml");

    public static Problem RetiresNothing(Place place, string path) => new(
        "FP2003",
        Severity.Warning,
        place,
        $"this takes {Quoted(path)} out, but no layer below has it",
        "it may have another name or folder there",
        "name the file exactly as the file that is to go");

    public static Problem RetiredAndMore(Place place, string key) => Error(
        "FP2004",
        place,
        $"a file that retires a rule also says {Quoted(key)}",
        "it can take the rule out or replace it, not both",
        "leave only retire: yes and why, or remove retire");

    public static Problem PartMissing(string folder, string file) => Error(
        "FP2005",
        Place.Whole(folder),
        $"the pack has no {file}",
        "the rest cannot be read without it",
        "add the file; the shipped pack shows what stands in it");

    public static Problem EmptyRuleFile(string file) => Error(
        "FP2006",
        Place.Whole(file),
        "the file says nothing",
        "it may have been saved by mistake",
        "write the rule, or delete the file; to take out a rule of a layer below write retire: yes");

    public static Problem FigureWithoutUnit(YamlScalar found, string what, string unit) => Error(
        "FP2101",
        found.Place,
        $"{what} is {Quoted(found.Text)}, which has no unit",
        "a number alone can be read in several ways",
        $"write the unit behind it, for example: {found.Text} {unit}");

    public static Problem CostWithoutCurrency(YamlScalar found, string what) => Error(
        "FP2107",
        found.Place,
        $"{(what is "low" or "likely" or "high" ? "the cost" : what)} {Quoted(found.Text)} has no currency",
        "budgets are added up, so every amount needs the same currency",
        $"write the currency after the amount, for example: {found.Text} EUR");

    public static Problem OtherUnit(YamlScalar found, string what, string unit) => Error(
        "FP2102",
        found.Place,
        $"{what} is {Quoted(found.Text)}, but a figure in {unit} belongs here",
        "it is computed with in that unit",
        $"write a number and {unit}, for example: 1 {unit}");

    public static Problem UnknownUnit(Place place, string unit) => Error(
        "FP2103",
        place,
        $"{Quoted(unit)} is no unit that is known",
        "answers are converted to this unit",
        "use one such as m, mm, m2, kg, km/h, kW, %, ppm, degrees, EUR, h");

    public static Problem ShareOutside(YamlScalar found, string what) => Error(
        "FP2104",
        found.Place,
        $"{what} is {Quoted(found.Text)}, but a chance goes from 0 % to 100 %",
        "outside of that it has no meaning",
        "write a figure such as 15 %");

    public static Problem RangeOutOfOrder(Place place, string what, params string[] ends) => Error(
        "FP2105",
        place,
        $"{what} is out of order",
        $"it goes from {string.Join(" over ", ends)}, none below the one before and none below what is possible",
        "put the figures in order");

    public static Problem EffectOutOfOrder(Place place, string what, bool lessIsBetter) => Error(
        "FP2105",
        place,
        $"the effect on {what} is out of order",
        $"worst, likely and best are seen from the owner's side; for {what} {(lessIsBetter ? "less" : "more")} is better",
        $"let the figures {(lessIsBetter ? "fall" : "rise")} from worst to best");

    public static Problem NoBasis(YamlScalar found, string what) => Error(
        "FP2106",
        found.Place,
        $"{what}: {Quoted(found.Text)} names no source",
        "a reader must be able to see what a figure is worth",
        "name the id of a source, or say: from memory, common practice, computed, judgement");

    public static Problem UnknownId(Place place, RuleKind kind, string id, IEnumerable<string> known) => Error(
        "FP2201",
        place,
        $"there is no {RuleKinds.Word(kind)} {Quoted(id)}{Meant(id, known.Order(StringComparer.Ordinal))}",
        "the rule cannot be followed to something that is not there",
        kind == RuleKind.Source ? "add the source to sources.yaml, or correct the id" : "correct the id, or add what it names");

    public static Problem UnknownAnswer(Place place, string answer, string observation, IEnumerable<string> known)
    {
        List<string> answers = [.. known];
        return Error(
            "FP2202",
            place,
            $"{observation} has no answer {Quoted(answer)}{Meant(answer, answers)}",
            "nobody could ever give it",
            $"use one of: {string.Join(", ", answers)}");
    }

    public static Problem IdIsNotFileName(Place place, string id, string name) => Error(
        "FP2203",
        place,
        $"the id is {Quoted(id)}, but it stands under {Quoted(name)}",
        "a rule is found by its name, so both must be the same",
        $"write id: {name}, or rename the file or folder to {id}");

    public static Problem DefinedTwice(Place place, RuleKind kind, string id, Place first) => Error(
        "FP2204",
        place,
        $"the {RuleKinds.Word(kind)} {Quoted(id)} is there already, at {first}",
        "only one of them can be meant",
        "give one of them another id; an older name under was counts too");

    public static Problem IllFormedId(Place place, string id, RuleKind kind) => Error(
        "FP2205",
        place,
        $"{Quoted(id)} is not written as an id",
        "ids are file names, words in logbooks and links, so they keep to plain letters",
        kind == RuleKind.Fact ? "use small letters, digits and underscores, for example: width_m" : "use small letters, digits and hyphens, for example: seal-bonnet-rear-edge");

    public static Problem FolderWithoutZone(Place place, string zone) => Error(
        "FP2206",
        place,
        $"the folder {Quoted(zone)} has no zone.yaml",
        "a question needs the place on the car where it is asked",
        $"add zones/{zone}/zone.yaml, or move the file to the folder of its zone");

    public static Problem PairStatedTwice(Place place, string other) => Error(
        "FP2207",
        place,
        $"what this fix and {Quoted(other)} have to do with each other stands in both files",
        "stated twice, the two can come to differ",
        $"keep it in one of the files; the other is told");

    public static Problem NamesItself(Place place, string id) => Error(
        "FP2208",
        place,
        $"{Quoted(id)} names itself as a clash or a good pair",
        "it needs another to clash or go well with",
        "name the other fix");

    public static Problem TooFewAnswers(Place place, string what) => Error(
        "FP2209",
        place,
        $"there are fewer than two {what}",
        "a question with one answer asks nothing",
        "write at least two");

    public static Problem IncompleteTest(Place place, IEnumerable<string> comparisons) => Error(
        "FP2210",
        place,
        "a condition needs a fact or an observation and one comparison",
        "otherwise it cannot be decided",
        $"write for example {{fact: engine_cooling, is: water}}; comparisons: {string.Join(", ", comparisons)}");

    public static Problem FactOrObservation(Place place) => Error(
        "FP2211",
        place,
        "either a fact or an observation is named here, one of them",
        "what must be known is asked for by its question",
        "write for example {fact: rear_glass_hold} or {observation: glass-push}");

    public static Problem OneUnless(Place place) => Error(
        "FP2212",
        place,
        "more than one answer would make the first fix unnecessary",
        "only one is understood",
        "keep the answer that settles it best");

    public static Problem WordNotUsed(Place place, string word, IEnumerable<string> known) => Error(
        "FP2213",
        place,
        $"{Quoted(word)} is explained here, but it is no word of the list{Meant(word, known)}",
        "nobody can use it, so the explanation misleads",
        "correct or remove it");

    public static Problem WordNotExplained(Place place, string word) => Error(
        "FP2214",
        place,
        $"the word {Quoted(word)} is not explained",
        "the list is shown to people who write rules",
        $"add a line: {word}: what it means");

    public static Problem PrerequisiteRing(Place place, IReadOnlyList<string> ring) => Error(
        "FP2301",
        place,
        $"each of these fixes must come before the next, round in a ring: {string.Join(", ", ring)}",
        "none of them could ever be started",
        "take one requires out");

    public static Problem NothingRaises(Place place, string id) => Error(
        "FP2302",
        place,
        $"no answer speaks for {Quoted(id)}, or its prior is nothing",
        "it could never be found",
        "add a sign such as {yes: for}, and a prior above 0 %");

    public static Problem NothingRecommends(Place place, string id) => Error(
        "FP2303",
        place,
        $"nothing leads to {Quoted(id)}",
        "it acts on no cause that can be found, and no gate or other fix asks for it",
        "add a cause under acts_on, and what it does for the owner under effects");

    public static Problem NothingTriggers(Place place, string id) => Error(
        "FP2304",
        place,
        $"nothing triggers the gate {Quoted(id)}",
        "it could never protect anybody",
        "add an answer or a condition under triggers");

    public static Problem RunBlocksItself(Place place, string gate, string kind, string run) => Error(
        "FP2305",
        place,
        $"the sign-off {Quoted(kind)} of {Quoted(gate)} needs the run {Quoted(run)}, which stays blocked until then",
        "a gate must not hang for its clearing on what it blocks",
        "let an earlier sign-off lift that run, or ask for other evidence");

    public static Problem CureBlocked(Place place, string gate, string kind, IEnumerable<string> fixes) => Error(
        "FP2305",
        place,
        $"the sign-off {Quoted(kind)} of {Quoted(gate)} comes after {string.Join(" or ", fixes)}, which the gate itself holds back",
        "a gate must not hang for its clearing on what it blocks",
        "name the cure under helped_by and take the gate out of its before");

    public static Problem GateRing(Place place, IReadOnlyList<string> ring) => Error(
        "FP2306",
        place,
        $"each of these gates waits for the next, round in a ring: {string.Join(", ", ring)}",
        "none of them could ever be cleared",
        "take one needs_gates out");

    public static Problem NeverClear(Place place, string gate) => Error(
        "FP2307",
        place,
        $"the last sign-off of {Quoted(gate)} does not lift all",
        "the gate could never be cleared",
        "add a last sign-off with lifts: [all]");

    public static Problem TooManyCauses(Place place, string question, int causes, int most) => Error(
        "FP2308",
        place,
        $"{causes} causes have signs in {Quoted(question)}, more than {most}",
        "the answers are weighed against all of them at once, and that grows too large",
        "ask two questions, or leave out the weakest signs");

    public static Problem NeedsWhatItExcludes(Place place, string fix, string other) => Error(
        "FP2309",
        place,
        $"{Quoted(fix)} needs {Quoted(other)} first and excludes it as well",
        "it could never be done",
        "take one of the two out");

    public static Problem SealsTooSoon(Place place, string fix, string gate, string outlet) => Error(
        "FP2310",
        place,
        $"{Quoted(fix)} seals the cabin without {Quoted(outlet)} first and {Quoted(gate)} before it",
        "sealing raises the pressure in the cabin, and that pulls harder on the glass",
        "add both, or say under sealing_exempt why it needs neither");

    public static Problem TooMuchToKnow(Place place, int most) => Error(
        "FP2311",
        place,
        $"more than {most} things must be known",
        "people give up on a long list before anything is safe",
        $"keep the {most} that matter most; put equals under or");

    public static Problem ConcernsNobody(Place place) => Error(
        "FP2312",
        place,
        "the gate never concerns anybody",
        "it would always stand as not concerned",
        "write always: yes, fixes: yes, faster: yes, or name runs or facts");

    public static Problem SourceUnused(Place place, string id) => new(
        "FP2321",
        Severity.Warning,
        place,
        $"nothing cites the source {Quoted(id)}",
        "a list of sources is read as what the rules stand on",
        "cite it where it is used, or remove it");

    public static Problem AnswersUnused(Place place, string id) => new(
        "FP2322",
        Severity.Note,
        place,
        $"no cause and no gate uses an answer of {Quoted(id)}",
        "it is asked in vain, unless it only shows that a fix worked",
        "add a sign to a cause, or leave it");

    public static Problem NoiseClaimTooLarge(Place place, string fix, double claim, double limit) => Error(
        "FP2323",
        place,
        $"{Quoted(fix)} claims {claim:0.#} dB(A) for itself, more than the {limit:0.#} dB(A) that its action can take away",
        "whatever is left of its cause stays to be heard",
        "lower the best figure, or let it cure instead of reduce");

    public static Problem NoiseClaimsContradict(Place place, string fix, double claim, double reached) => new(
        "FP2324",
        Severity.Warning,
        place,
        $"{Quoted(fix)} claims {claim:0.#} dB(A), but with what other fixes claim of the same causes it reaches {reached:0.#} dB(A)",
        "the causes cannot be that loud and that quiet at once",
        "bring the noise figures of the fixes on these causes into line");

    public static Problem DragTooLarge(Place place, string what, double percent, double limit) => Error(
        "FP2325",
        place,
        $"{what} would make {percent:0} % of the drag of the car, more than {limit:0} %",
        "the rest is the shape itself, which no cheap fix touches",
        "lower the drag figures of the fixes");

    public static Problem StrengthsContradict(Place place, string question, string cause, double off) => new(
        "FP2326",
        Severity.Note,
        place,
        $"the strengths of {Quoted(question)} contradict each other; for {cause} they come back {off * 100:+0;-0} % off",
        "the chances of the answers must add up to one whatever the cause",
        "balance what speaks for a cause with what speaks against it, or state how usual each answer is");
}
