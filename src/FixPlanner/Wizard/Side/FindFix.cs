using FixPlanner.Core.Interview;
using FixPlanner.Core.Quantities;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Side;

/// <summary>Any fix or zone by a part of its name: always, never, as built, work done. Works from the aims and from the plan.</summary>
internal sealed class FindFix(Section from) : ISideScreen
{
    private string words = "";

    public string Id => $"find-{from}";

    public Section From => from;

    public KeyRow Opener => new(Key.F6, "F6", "always, never, as built", new OpenSide(Id));

    public void Open(Workbench bench) => words = "";

    public ScreenModel Show(Workbench bench)
    {
        IReadOnlyList<Found> found = bench.Interviewer.Find(bench.Interview, words);
        ListModel list = new()
        {
            Id = Id,
            Title = "",
            Columns = [new("Fix or zone", 0), new("", 5), new("Decided", 18)],
            Rows = [.. found.Select(f => new RowModel(f.Subject.ToString(), [Prose.Plain(f.Title), f.Subject.Kind == SubjectKind.Zone ? "zone" : "fix", f.Standing], Opens: true))],
            WhenEmpty = words.Length == 0 ? "Nothing is decided yet. Type a part of the name of a fix or a zone." : "No fix and no zone is called so.",
        };
        return new PickModel { Id = Id, Title = "What you always or never want, what stays as built, and work done", List = list };
    }

    public bool Update(Message message, Workbench bench)
    {
        switch (message)
        {
            case Sought sought:
                words = sought.Words;
                return true;
            case Opened opened when Subject.Of(opened.Row) is { } subject:
                bench.Interview = Interviewer.Move(bench.Interview, new(from, subject.Key));
                return true;
            default:
                return false;
        }
    }
}
