namespace FixPlanner.Core.Pictures;

/// <summary>A fastback.</summary>
internal static class Fastback
{
    private const string LargeRows = """

                                ________________
                              ,'          |     `-._
                             /            |         `-._
                           ,'             |             `-._
            ______________/_______________|_________________`-._
          ,'             |()              |                     `.
         (|o             |              = |                      |o
          |      .-''-.  |                |       .-''-.         |
         [|_____/ .--. \_|________________|______/ .--. \________|]
                | (  ) |                         | (  ) |      ==~
                 `-..-'                           `-..-'
        """;

    private const string SlimRows = """

                       __________
                     ,'      |   `-._
          __________/________|_______`-.__
         |         |         |            `.
        [|___.--.__|_________|____.--._____|]
             (  )                 (  )    =~
             `--'                 `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 2, Scuttle = 18, Header = 23.5, Door = 33.5, Pillar = 42, RoofEnd = 40, GlassFoot = 53, Tail = 58,
        Front = 11.5, Rear = 43.5, Radius = 4,
        Roof = 1, Glass = 2, Bonnet = 5, Belt = 6, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 1, Scuttle = 12, Header = 14.5, Door = 21, Pillar = 25, RoofEnd = 25.5, GlassFoot = 31, Tail = 36.5,
        Front = 7, Rear = 27.5, Radius = 2,
        Roof = 1, Glass = 2, Bonnet = 3, Belt = 4, Deck = 4, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 14, Scuttle = 130, Header = 174, Door = 252, Pillar = 296, RoofEnd = 286, GlassFoot = 376, Tail = 416,
        Front = 84, Rear = 334, Radius = 32,
        Roof = 28, Glass = 36, Bonnet = 88, Belt = 74, Deck = 70, Sill = 134, WheelTop = 98, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 160, RoofWidth = 112, Roof = 28, Belt = 74, Deck = 80, Sill = 134, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("fastback", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
