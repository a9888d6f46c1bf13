namespace FixPlanner.Core.Pictures;

/// <summary>A forward-control van, with the scoops of a rear engine.</summary>
internal static class ForwardControlVan
{
    private const string LargeRows = """
               ________________________________________________
              /        |                 |                     \
             /         |                 |                      \
            /          |                 |                      |
           /___________|_________________|______________________|
          |   |()      |                 |                      |
          |o  |      = | =               |  ////                o
          |   |        |                 |  ////                |
          |   |   .-''-.                 |         .-''-.       |
         [|___|__/ .--. \________________|________/ .--. \______|]
                 | (  ) |                         | (  ) |    ==~
                  `-..-'                           `-..-'
        """;

    private const string SlimRows = """
            ________________________________
           /    |          |               \
          /_____|__________|________________\
          |  |  |          |                 |
          |o |= |          |  ///            |o
         [|__|__.--._______|______.--._______|]
                (  )              (  )     =~
                `--'              `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 2, Scuttle = 3.5, Header = 7, Door = 16, Pillar = 34, RoofEnd = 55, GlassFoot = 57.5, Tail = 57.5,
        Front = 12.5, Rear = 45.5, Radius = 4,
        Roof = 0, Glass = 1, Bonnet = 4, Belt = 5, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 2, Scuttle = 2.5, Header = 4.5, Door = 8.5, Pillar = 20, RoofEnd = 36, GlassFoot = 37, Tail = 37.5,
        Front = 10.5, Rear = 28.5, Radius = 2,
        Roof = 0, Glass = 1, Bonnet = 2, Belt = 3, Deck = 3, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 16, Scuttle = 22, Header = 50, Door = 120, Pillar = 250, RoofEnd = 398, GlassFoot = 412, Tail = 416,
        Front = 86, Rear = 330, Radius = 32,
        Roof = 8, Glass = 16, Bonnet = 76, Belt = 66, Deck = 66, Sill = 134, WheelTop = 98, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 172, RoofWidth = 156, Roof = 8, Belt = 66, Deck = 68, Sill = 134, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("forward-control-van", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
