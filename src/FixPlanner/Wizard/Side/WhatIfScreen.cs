using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Side;

/// <summary>The models have computed a supposition.</summary>
internal sealed record SupposedByModels(Supposed Supposed) : Message;

/// <summary>What if: the owner changes limits, weights, planned top speed and fixes; everything answers at once, and nothing is kept until asked.</summary>
internal sealed class WhatIfScreen : ISideScreen
{
    private Supposition supposition = Supposition.None;
    private Supposed? shown;

    public string Id => WhatIfView.Id;

    public Section From => Section.Plan;

    public KeyRow Opener { get; } = new(new Key('i'), "i", "what if", new OpenSide(WhatIfView.Id));

    public void Open(Workbench bench)
    {
        supposition = Supposition.None;
        bench.Notice = "Try other limits and fixes; Esc goes back to the plan.";
    }

    public ScreenModel Show(Workbench bench) => WhatIfView.Of(Now(bench));

    public bool Update(Message message, Workbench bench)
    {
        switch (message)
        {
            case SupposedByModels computed:
                shown = shown is not null && ReferenceEquals(shown.Supposition, computed.Supposed.Supposition) && SamePlan(shown.Standing, computed.Supposed.Standing) ? computed.Supposed : shown;
                return true;
            case Chosen { List: WhatIfView.Id } chosen:
                supposition = Changed(Now(bench), chosen, bench);
                bench.Notice = SupposedWords.Of(Now(bench))[0];
                return true;
            case Opened { List: WhatIfView.Id, Row: WhatIfView.Again }:
                supposition = Supposition.None;
                bench.Notice = "Back at the proposed plan.";
                return true;
            case Opened { List: WhatIfView.Id, Row: WhatIfView.Wish }:
                Keep(bench);
                return true;
            case Back:
                bench.Notice = "Back at the plan; what was tried and not wished is gone.";
                return false;
            default:
                return false;
        }
    }

    // Points, money and the pack's sums stand within a frame; what the models say of both sets follows.
    private Supposed Now(Workbench bench)
    {
        Assessment standing = bench.Known();
        if (shown is null || !SamePlan(shown.Standing, standing) || !ReferenceEquals(shown.Supposition, supposition))
        {
            Supposition supposed = supposition;
            bool follows = bench.Foresight.Beside(() => new SupposedByModels(bench.Supposing.Of(standing, supposed)));
            shown = bench.Supposing.Of(standing, supposed, withModels: !follows);
        }

        return shown;
    }

    // More draws of the same plan change nothing here.
    private static bool SamePlan(Assessment one, Assessment other) =>
        ReferenceEquals(one.Situation.Logbook, other.Situation.Logbook) && one.Plan.Items.Select(i => i.Fix.Id).SequenceEqual(other.Plan.Items.Select(i => i.Fix.Id));

    private void Keep(Workbench bench)
    {
        IReadOnlyList<LogbookEdit> edits = supposition.AsWish(bench.Pack, bench.Book.Logbook.Limits);
        if (edits.Count == 0)
        {
            bench.Notice = "Nothing was changed yet.";
        }
        else if (bench.Keep(edits))
        {
            supposition = Supposition.None;
        }
    }

    private static Supposition Changed(Supposed now, Chosen chosen, Workbench bench)
    {
        Supposition s = now.Supposition;
        if (chosen.Choice == "=")
        {
            return s;
        }

        double step = double.TryParse(chosen.Choice, out double by) ? by : 0;
        return chosen.Row switch
        {
            WhatIfView.Budget => s with { BudgetEur = Math.Max(0, WhatIfView.BudgetEur(now) + step) },
            WhatIfView.Hours => s with { Hours = Math.Max(0, WhatIfView.OwnHours(now) + step) },
            WhatIfView.Speed => bench.Supposing.TopSpeed(bench.Pack, $"{WhatIfView.SpeedKmh(now) + step:0} km/h") is { Entry: { } entry } ? s with { TopSpeed = entry } : s,
            var aim when aim.StartsWith(WhatIfView.AimMark, StringComparison.Ordinal) => s with { Weights = s.Weights.SetItem(aim[WhatIfView.AimMark.Length..], step) },
            var fix when fix.StartsWith(WhatIfView.FixMark, StringComparison.Ordinal) => s with { Ticks = s.Ticks.SetItem(fix[WhatIfView.FixMark.Length..], chosen.Choice == "in") },
            _ => s,
        };
    }
}
