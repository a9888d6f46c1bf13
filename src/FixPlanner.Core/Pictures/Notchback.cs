namespace FixPlanner.Core.Pictures;

/// <summary>A saloon with a boot.</summary>
internal static class Notchback
{
    private const string LargeRows = """
                              ____________________
                             /          |      | '.
                            /           |      |   \
                           /            |      |    \
            ______________/_____________|______|_____\__________
          ,'             |()            |      |               |
         (|o             |            = |      |               |o
          |              |              |      |               |
          |      .-''-.  |              |       .-''-.         |
         [|_____/ .--. \_|______________|______/ .--. \________|]
                | (  ) |                       | (  ) |      ==~
                 `-..-'                         `-..-'
        """;

    private const string SlimRows = """
                      _____________
                     /      |    | \
          __________/_______|____|__\________
         |         |        |               |
         |o        |       =|              o|
        [|___.--.__|________|____.--._______|]
             (  )                (  )     =~
             `--'                `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 2, Scuttle = 18, Header = 22, Door = 32, Pillar = 39, RoofEnd = 41.5, GlassFoot = 46, Tail = 56,
        Front = 11.5, Rear = 42.5, Radius = 4,
        Roof = 0, Glass = 1, Bonnet = 4, Belt = 5, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 1, Scuttle = 12, Header = 14, Door = 20, Pillar = 25, RoofEnd = 27, GlassFoot = 29.5, Tail = 36,
        Front = 7, Rear = 26.5, Radius = 2,
        Roof = 0, Glass = 1, Bonnet = 2, Belt = 3, Deck = 3, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 14, Scuttle = 122, Header = 160, Door = 240, Pillar = 290, RoofEnd = 304, GlassFoot = 344, Tail = 418,
        Front = 82, Rear = 332, Radius = 32,
        Roof = 20, Glass = 28, Bonnet = 82, Belt = 70, Deck = 72, Sill = 133, WheelTop = 98, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 158, RoofWidth = 122, Roof = 20, Belt = 70, Deck = 76, Sill = 133, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("notchback", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
