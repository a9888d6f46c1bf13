namespace FixPlanner.Core.Pictures;

/// <summary>A two-box hatchback.</summary>
internal static class TwoBoxHatch
{
    private const string LargeRows = """
                              __________________________
                             /            |        |    \
                            /             |        |     '.
                           /              |        |       \
             _____________/_______________|________|________\
           ,'            |()              |        |         \
          (|o            |              = |                  o|
           |             |                |                   |
           |      .-''-. |                |       .-''-.      |
          [|_____/ .--. \|________________|______/ .--. \_____|]
                 | (  ) |                        | (  ) |    ==~
                  `-..-'                          `-..-'
        """;

    private const string SlimRows = """
                      _________________
                     /       |    |    \
          __________/________|____|_____\
         |         |         |           \
         |o        |        =|          o|
        [|____.--._|_________|____.--.___|]
              (  )                (  )  =~
              `--'                `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 3, Scuttle = 17.5, Header = 21.5, Door = 34, Pillar = 43, RoofEnd = 48, GlassFoot = 52, Tail = 54,
        Front = 12.5, Rear = 44.5, Radius = 4,
        Roof = 0, Glass = 1, Bonnet = 4, Belt = 5, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 1, Scuttle = 12, Header = 14, Door = 21, Pillar = 26, RoofEnd = 31, GlassFoot = 33, Tail = 34,
        Front = 8, Rear = 27.5, Radius = 2,
        Roof = 0, Glass = 1, Bonnet = 2, Belt = 3, Deck = 3, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 30, Scuttle = 122, Header = 158, Door = 244, Pillar = 318, RoofEnd = 350, GlassFoot = 392, Tail = 400,
        Front = 92, Rear = 330, Radius = 31,
        Roof = 20, Glass = 28, Bonnet = 84, Belt = 70, Deck = 74, Sill = 133, WheelTop = 100, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 154, RoofWidth = 122, Roof = 20, Belt = 70, Deck = 76, Sill = 133, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("two-box-hatch", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
