using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Jobs;
using FixPlanner.Wizard;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

/// <summary>Somebody who hits any key: nothing breaks, the logbook can always be read, and undo leads back to the first byte.</summary>
[Collection(nameof(Alone))]
public sealed class RobotTests
{
    private static readonly bool Long = Environment.GetEnvironmentVariable("FIXPLANNER_LONG") == "1";

    /// <summary>1,000 keys each with FIXPLANNER_LONG=1, fewer in every run.</summary>
    private static readonly int Keys = Long ? 1000 : 150;

    private static readonly Key[] Named =
    [
        Key.Enter, Key.Enter, Key.Enter, Key.Esc, Key.F1, Key.F2, Key.F3, Key.F4, Key.F5, Key.F6, Key.F7, Key.F8, Key.F8, Key.F9,
        Key.CursorUp, Key.CursorDown, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.PageUp, Key.PageDown, Key.Home, Key.End,
        Key.Tab, Key.Tab.WithShift, Key.Backspace, Key.Delete, Key.U.WithCtrl, Key.Z.WithCtrl, Key.Space, Key.A.WithAlt, Key.F12,
    ];

    private static readonly string[] Texts = ["105 km/h", "1.58 m", "1974", "12 EUR", "-3 h", "a: [b, {c", "# no remark", "é漢字 \U0001F697", "  ", "2026-06-01", "0.6", "\"quoted\"\tand\nmore"];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Any_keys_pastes_and_sizes_break_nothing_and_undo_leads_back_to_the_first_byte(int seed)
    {
        using JobFiles files = new();
        Random chance = new(seed);
        string path = seed % 4 == 0 ? files.New("car.logbook.yaml") : files.Copy(new[] { "lindle", "marram", "pennock" }[seed % 3]);
        if (seed % 4 == 0)
        {
            File.WriteAllText(path, MadeUpCars.Text(JobFiles.Pack, seed));
        }

        byte[] first = File.ReadAllBytes(path);
        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
        {
            using (Screen screen = new Screen(new WizardProgram(book, JobFiles.Pack, JobFiles.Today)).WithLoop())
            {
                for (int i = 0; i < Keys; i++)
                {
                    Hit(screen, chance);
                    if (i % 10 == 0)
                    {
                        string stood = screen.Text + screen.Styles;
                        Assert.Equal(screen.DrawnWhole().Text + screen.Styles, stood);
                    }
                }

                screen.Press(Key.Q.WithCtrl);
                Assert.True(screen.Shell.Over);
            }

            LogbookReading read = LogbookReader.ReadFile(path, JobFiles.Pack);
            Assert.Empty(read.Problems);
            Assert.True(read.IsSound);
            while (book.NextUndo is not null)
            {
                Assert.NotNull(book.Undo().Words);
            }
        }

        Assert.Equal(first, File.ReadAllBytes(path));
    }

    private static void Hit(Screen screen, Random chance)
    {
        switch (chance.Next(12))
        {
            case 0:
                screen.Paste(Texts[chance.Next(Texts.Length)]);
                break;
            case 1 when chance.Next(4) == 0:
                screen.Resize(chance.Next(1, 160), chance.Next(1, 50));
                break;
            case 1:
                screen.Resize(80, 24);
                break;
            case < 6:
                screen.Press(new Key((char)chance.Next(' ', '~' + 1)));
                break;
            default:
                screen.Press(Named[chance.Next(Named.Length)]);
                break;
        }
    }
}
