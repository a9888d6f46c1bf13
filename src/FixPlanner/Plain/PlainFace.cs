using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Logbooks;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Plain;

/// <summary>
/// The whole job as numbered lines: for screen readers, dumb terminals and pipes. It decides nothing: what is asked comes from
/// the interview.
/// </summary>
internal sealed class PlainFace
{
    private static readonly Section[] Asked = [Section.Car, Section.Aims, Section.BeforeYouDrive, Section.WalkRound, Section.Proof];
    private static readonly Section[] Listed = [Section.Gates, Section.Plan];

    private readonly PlainBench bench;
    private readonly PlainQuestions questions;

    private PlainFace(PlainBench bench) => (this.bench, questions) = (bench, new(bench));

    /// <summary>Runs the interview on standard input and output.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string? file, IReadOnlyList<string> rules, DateOnly? date)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return exit;
        }

        string path = file ?? "car.logbook.yaml";
        OpenLogbook? book = OpenLogbook.Open(path, pack, out IReadOnlyList<Files.Problems.Problem> problems);
        Desk.Say(problems);
        if (book is null)
        {
            return problems.Any(p => p.Place.Line > 0) ? ExitCode.WrongInput : ExitCode.CannotReadOrWrite;
        }

        using (book)
        {
            if (book.Waiting.Count > 0)
            {
                Face.Choose(book);
            }

            return Over(Console.In, Console.Out, book, pack, date ?? DateOnly.FromDateTime(DateTime.Now));
        }
    }

    /// <summary>Runs the interview on any reader and writer.</summary>
    /// <returns>The exit code.</returns>
    public static int Over(TextReader input, TextWriter output, OpenLogbook book, KnowledgePack pack, DateOnly today) =>
        new PlainFace(new(new(input, output), book, pack, today)).Whole();

    private int Whole()
    {
        bench.Say($"FixPlanner, logbook {bench.Book.Path}. {(bench.Book.Recovered.Length > 0 ? bench.Book.Recovered + " " : "")}Type a number or a value, then Enter.");
        bench.Say("Enter alone: keep what stands, or pass by.  < back   ? why and how   - not looked   ~ not sure   + not today   h2 = answer 2, but hesitant   > next part   t test-day sheet   w write that sheet to a file   u undo   q quit");
        InterviewState state = new(bench.Book.Logbook, new(Section.Car));
        foreach (Section section in Asked)
        {
            Title(section);
            state = section == Section.WalkRound ? state with { Place = new(section) } : bench.Interviewer.Begin(state, section);
            (state, Ending ending) = questions.Ask(state, section);
            if (ending != Ending.Done)
            {
                return End(ending);
            }
        }

        PlainOpening opening = new(bench, questions);
        foreach (Section section in Listed)
        {
            Title(section);
            (state, Ending? ending) = opening.Run(state with { Place = new(section) });
            if (ending is { } end)
            {
                return End(end);
            }
        }

        Results();
        return WhatIf();
    }

    private int WhatIf()
    {
        bench.Say("");
        bench.Say("What if? Type w to try other limits, speed, weights and fixes; Enter alone: done.");
        while (bench.Lines.Read() is "w")
        {
            IReadOnlyList<LogbookEdit> wish = new WhatIfLines(new(bench.Assessor, bench.Today), bench.Pack, bench.Lines.Read, bench.Say).Run(bench.Assess(PlanDepth.Quick));
            if (wish.Count == 0)
            {
                break;
            }

            if (!bench.Keep(wish))
            {
                return End(Ending.CannotKeep);
            }

            bench.Say("kept");
            Results();
            bench.Say("What if? Type w to try more; Enter alone: done.");
        }

        return ExitCode.Done;
    }

    private void Results()
    {
        Assessment assessment = bench.Assess(PlanDepth.Full);
        bench.Say("");
        bench.Lines.SayText(TextWriting.Write(PlanDocument.Of(assessment)));
        bench.Say($"Kept in {bench.Book.Path}. On paper: fixplanner plan {bench.Book.Path} --format html --out plan.html");
    }

    private int End(Ending ending)
    {
        string path = bench.Book.Path;
        switch (ending)
        {
            case Ending.CannotKeep:
                Console.Error.WriteLine("The last answer could not be kept; everything before it is on disk.");
                return ExitCode.CannotReadOrWrite;
            case Ending.InputEnded:
                bench.Say("");
                Console.Error.WriteLine($"The input ended. Every confirmed answer is kept in {path}; go on with: fixplanner --plain {path}");
                return ExitCode.Done;
            default:
                bench.Say($"Kept in {path}. Go on with: fixplanner --plain {path}   The plan: fixplanner plan {path}");
                return ExitCode.Done;
        }
    }

    private void Title(Section section)
    {
        bench.Say("");
        bench.Say($"== {Words.Of(section)} ==");
    }
}
