namespace FixPlanner.Core.Pictures;

/// <summary>A pick-up.</summary>
internal static class PickUp
{
    private const string LargeRows = """
                            _____________
                           /           | \
                          /            |  |
                         /             |  |
            ____________/______________|__|_______________________
          ,'           |()             |  |                      |
         (|o           |             = |  |                      |o
          |            |               |  |                      |
          |    .-''-.  |               |  |         .-''-.       |
         [|___/ .--. \_|_______________|__|________/ .--. \______|]
              | (  ) |                             | (  ) |    ==~
               `-..-'                               `-..-'
        """;

    private const string SlimRows = """
                     ________
                    /      | |
           ________/_______|_|________________
         ,'        |       | |               |
         |o        |      =| |               |o
        [|___.--.__|_______|_|_____.--.______|]
             (  )                  (  )    =~
             `--'                  `--'
        """;

    private static readonly SideLayout Large = new()
    {
        Nose = 2, Scuttle = 16, Header = 20, Door = 31, Pillar = 33, RoofEnd = 33, GlassFoot = 34.5, Tail = 57.5,
        Front = 9.5, Rear = 47.5, Radius = 4,
        Roof = 0, Glass = 1, Bonnet = 4, Belt = 5, Deck = 5, Sill = 9, WheelTop = 8, Ground = 12,
    };

    private static readonly SideLayout Slim = new()
    {
        Nose = 1, Scuttle = 11, Header = 13, Door = 19, Pillar = 20, RoofEnd = 21, GlassFoot = 22, Tail = 37,
        Front = 7, Rear = 28.5, Radius = 2,
        Roof = 0, Glass = 1, Bonnet = 2, Belt = 3, Deck = 3, Sill = 5, WheelTop = 5, Ground = 8,
    };

    private static readonly SideLayout Side = new()
    {
        Nose = 14, Scuttle = 112, Header = 144, Door = 222, Pillar = 236, RoofEnd = 240, GlassFoot = 250, Tail = 420,
        Front = 82, Rear = 342, Radius = 34,
        Roof = 14, Glass = 22, Bonnet = 80, Belt = 66, Deck = 72, Sill = 130, WheelTop = 94, Ground = 160,
    };

    private static readonly RearLayout Rear = new() { Width = 162, RoofWidth = 126, Roof = 14, Belt = 66, Deck = 72, Sill = 130, Ground = 160 };

    public static CarPicture Picture { get; } = PictureMaker.Make("pick-up", (LargeRows, Large), (SlimRows, Slim), Side, Rear);
}
