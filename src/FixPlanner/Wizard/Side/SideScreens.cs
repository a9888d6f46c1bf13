using FixPlanner.Core.Interview;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Side;

/// <summary>The table of side screens, and of what shows models beyond questions, lists and texts.</summary>
internal static class SideScreens
{
    /// <summary>One of each, for one sitting.</summary>
    public static IReadOnlyList<ISideScreen> All() =>
    [
        new WhatIfScreen(), new FindFix(Section.Aims), new FindFix(Section.Plan),
        new TestDayScreen("test-day", Section.WalkRound), new TestDayScreen("test-day-first", Section.BeforeYouDrive),
    ];

    /// <summary>Screens for their own kinds of models.</summary>
    public static IReadOnlyList<IScreen> Views() => [new GridScreen()];
}
