using CsCheck;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Tests.Files.Writing;

public class YamlSplicerPropertyTests
{
    private static readonly Gen<string> Answers = Gen.OneOf(
        Gen.String[Gen.Char["abc yes: #,{}[]'\"\n-"], 0, 12],
        Gen.Int[0, 3].Select(i => new[] { "no", "not sure", "105 km/h", "it's left: low" }[i]));

    private static YamlDocument Read(string text)
    {
        var problems = new ProblemList();
        YamlDocument? document = YamlReader.Read("car.yaml", text, problems);
        Assert.True(document is not null, string.Join('\n', problems.InOrder()) + "\n" + text);
        return document;
    }

    private static YamlDocument Apply(YamlDocument document, YamlPath path, YamlValue? value)
    {
        var problems = new ProblemList();
        Spliced? spliced = YamlSplicer.Apply(document, new YamlEdit(path, value), problems);
        Assert.True(spliced is not null, $"{path} refused\n{string.Join('\n', problems.InOrder())}\n{document.Text}");
        return spliced.Document;
    }

    [Fact]
    public void Apply_AnswerToOldQuestion_ChangesNothingButItsValue() => Gen.Select(HandStyledLogbooks.Seeds, Answers, Gen.Int[0, 99]).Sample(
        (seed, answer, pick) =>
        {
            (string text, IReadOnlyList<string> observations) = HandStyledLogbooks.Make(seed);
            if (observations.Count == 0)
            {
                return;
            }

            YamlDocument before = Read(text);
            YamlPath path = Finding(observations[pick % observations.Count]).Key("answer");
            YamlNode old = Spot.Find(before, path.Steps)!.Node!;

            YamlDocument after = Apply(before, path, YamlValue.Of(answer));

            // Byte for byte the same before and behind the value, and the value is what was wanted.
            Assert.Equal(text[..old.Start], after.Text[..old.Start]);
            Assert.EndsWith(text[old.End..], after.Text, StringComparison.Ordinal);
            Assert.Equal(YamlValue.Of(answer), ValueTree.At(YamlValue.From(Read(after.Text).Root), path));
        },
        iter: 400);

    [Fact]
    public void Apply_AnswerToNewQuestion_KeepsEveryOldLine() => Gen.Select(HandStyledLogbooks.Seeds, Answers).Sample(
        (seed, answer) =>
        {
            string text = HandStyledLogbooks.Make(seed).Text;
            YamlDocument before = Read(text);
            YamlPath path = Finding("new-look").Key("answer");

            YamlDocument after = Apply(before, path, YamlValue.Of(answer));

            Splice change = Splice.Between(text, after.Text);
            Assert.True(change.Removed.Trim().Length <= "[ ]  # remark".Length, $"took out {change.Removed}");
            Assert.Equal(YamlValue.Of(answer), ValueTree.At(YamlValue.From(Read(after.Text).Root), path));
            Assert.Equal(text, change.Inverse.ApplyTo(after.Text));
        },
        iter: 400);

    [Fact]
    public void Apply_AllKindsOfEdits_ComeOutAsOnPlainValues() => Gen.Select(HandStyledLogbooks.Seeds, Answers, Gen.Int[0, Edits.Length - 1]).Sample(
        (seed, answer, number) =>
        {
            YamlDocument before = Read(HandStyledLogbooks.Make(seed).Text);
            YamlEdit edit = Edits[number](answer);
            var problems = new ProblemList();

            YamlValue? wanted = ValueTree.Put(YamlValue.From(before.Root), edit)?.Whole;
            Spliced? spliced = YamlSplicer.Apply(before, edit, problems);

            // The splicer refuses by itself what would come out wrong; in these styles it must also never need to.
            Assert.True(wanted is null == spliced is null, $"{edit.Path}\n{string.Join('\n', problems.InOrder())}\n{before.Text}");
            Assert.Equal(wanted, spliced is null ? null : YamlValue.From(spliced.Document.Root));
        },
        iter: 2000);

    [Fact]
    public void Apply_EditAndItsInverse_GiveTheSameValues() => Gen.Select(HandStyledLogbooks.Seeds, Answers, Gen.Int[0, Edits.Length - 1]).Sample(
        (seed, answer, number) =>
        {
            YamlDocument before = Read(HandStyledLogbooks.Make(seed).Text);
            var problems = new ProblemList();
            if (YamlSplicer.Apply(before, Edits[number](answer), problems) is not Spliced done || done.Change.New is null)
            {
                return;
            }

            // Apply changed something that was there or not; taking it back by value restores what the file said.
            YamlDocument back = Apply(done.Document, done.Change.Path, done.Change.Old);
            Assert.Equal(YamlValue.From(before.Root), YamlValue.From(back.Root));
        },
        iter: 1000);

    [Fact]
    public void ReadAndApply_AnyText_NeverThrow() => Gen.Select(AnyText, Answers, Gen.Int[0, Edits.Length - 1]).Sample(
        (text, answer, number) =>
        {
            if (YamlReader.Read("car.yaml", text, new ProblemList()) is YamlDocument document)
            {
                YamlEdit edit = Edits[number](answer);
                Spliced? spliced = YamlSplicer.Apply(document, edit, new ProblemList());
                Assert.True(spliced is null || YamlValue.From(spliced.Document.Root) == ValueTree.Put(YamlValue.From(document.Root), edit)!.Value.Whole);
            }
        },
        iter: 20_000);

    private static Gen<string> AnyText { get; } = Gen.OneOf(
        Gen.String,
        Gen.String[Gen.Char["ab:# -?{}[],&*!|>'\"%@`\\\n\r\t\u0085\u2028\uFEFF."], 0, 60],
        Gen.Select(HandStyledLogbooks.Seeds, Gen.Int[0, 2000], Gen.Int[0, 20], Gen.String[Gen.Char[":# -{}[],'\"\n"], 0, 4]).Select((seed, at, length, with) =>
        {
            string text = HandStyledLogbooks.Make(seed).Text;
            at %= text.Length;
            return text[..at] + with + text[Math.Min(text.Length, at + length)..];
        }));

    private static YamlPath Finding(string observation) =>
        YamlPath.Root.Key("rounds").Where("id", "before").Key("findings").Where("observation", observation);

    private static Func<string, YamlEdit>[] Edits { get; } =
    [
        answer => new(Finding("look-0").Key("answer"), YamlValue.Of(answer)),
        answer => new(Finding("look-1").Key("note"), YamlValue.Of(answer)),
        answer => new(Finding("look-2"), null),
        answer => new(Finding("look-0"), null),
        answer => new(Finding("look-1").Key("observation"), null),
        answer => new(Finding("look-0").Key("answer"), null),
        answer => new(YamlPath.Root.Key("car").Key("width"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("car").Key("width"), null),
        answer => new(YamlPath.Root.Key("car").Key("note"), null),
        answer => new(YamlPath.Root.Key("car").Key("note"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("car").Key("odd key: x").Key("inner"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("aims").Key("quiet"), null),
        answer => new(YamlPath.Root.Key("aims").Key("cooling"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("limits").Key("never").New(), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("work").Where("fix", "tape").Key("state"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("work").New(), YamlValue.Map(KeyValuePair.Create("fix", YamlValue.Of(answer)))),
        answer => new(YamlPath.Root.Key("work"), null),
        answer => new(YamlPath.Root.Key("rounds"), null),
        answer => new(YamlPath.Root.Key("rounds").Where("id", "after"), null),
        answer => new(YamlPath.Root.Key("rounds").Where("id", "before").Key("findings"), YamlValue.List(YamlValue.Of(answer), YamlValue.Of("x"))),
        answer => new(YamlPath.Root.Key("rounds").Where("id", "before").Key("findings"), null),
        answer => new(YamlPath.Root.Key("rounds").Where("id", "before").Key("weather").Key("rain"), YamlValue.Of(answer)),
        answer => new(YamlPath.Root.Key("car"), YamlValue.Map(KeyValuePair.Create("a", YamlValue.List(YamlValue.Of(answer))), KeyValuePair.Create("b", YamlValue.Unset))),
        answer => new(YamlPath.Root, YamlValue.Map(KeyValuePair.Create("logbook", YamlValue.Of(answer)))),
        answer => new(YamlPath.Root.Key("logbook"), YamlValue.Unset),
    ];
}
