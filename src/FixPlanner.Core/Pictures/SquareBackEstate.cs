namespace FixPlanner.Core.Pictures;

/// <summary>A square-back estate.</summary>
internal static class SquareBackEstate
{
    private const string LargeRows = """
                             __________________________________
                            /           |          |          \
                           /            |          |           \
                          /             |          |            \
            _____________/______________|__________|_____________\
          ,'            |()             |          |              |
         (|o            |             = |        = |             o|
          |             |               |          |              |
          |      .-''-. |               |         .-''-.          |
         [|_____/ .--. \|_______________|________/ .--. \_________|]
                | (  ) |                         | (  ) |       ==~
                 `-..-'                           `-..-'
        """;

    private const string SlimRows = """
                      ______________________
                     /       |      |      \
           _________/________|______|_______\
         ,'        |         |      |        |
        (|o        |        =|     =|       o|
        [|___.--. _|_________|____.--. ______|]
             (  )                 (  )     =~
             `--'                 `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 2, Scuttle = 17, Header = 21, Door = 32, Pillar = 49, RoofEnd = 55, GlassFoot = 58, Tail = 58.5,
        Front = 11.5, Rear = 44.5, Radius = 4,
        Roof = 0, Glass = 1, Bonnet = 4, Belt = 5, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 1, Scuttle = 12, Header = 14, Door = 21, Pillar = 31, RoofEnd = 36, GlassFoot = 37, Tail = 37,
        Front = 7, Rear = 26.5, Radius = 2,
        Roof = 0, Glass = 1, Bonnet = 2, Belt = 3, Deck = 3, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 14, Scuttle = 118, Header = 152, Door = 236, Pillar = 360, RoofEnd = 396, GlassFoot = 410, Tail = 414,
        Front = 82, Rear = 334, Radius = 32,
        Roof = 16, Glass = 24, Bonnet = 82, Belt = 68, Deck = 70, Sill = 132, WheelTop = 98, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 158, RoofWidth = 128, Roof = 16, Belt = 68, Deck = 70, Sill = 132, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("square-back-estate", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
