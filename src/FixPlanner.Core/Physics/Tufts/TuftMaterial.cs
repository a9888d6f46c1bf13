using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>A thread for tufts.</summary>
/// <param name="Id">Short name for files and commands.</param>
/// <param name="Name">Name for people.</param>
/// <param name="Weight">Weight of a metre of it.</param>
/// <param name="Diameter">Thickness.</param>
public sealed record TuftMaterial(string Id, string Name, LineLoad Weight, Length Diameter)
{
    private const double Gravity = 9.80665;

    /// <summary>Sewing cotton, 50 tex.</summary>
    public static TuftMaterial SewingCotton { get; } = OfTex("sewing-cotton", "sewing cotton (50 tex)", 50, 0.3);

    /// <summary>Crochet cotton, 150 tex.</summary>
    public static TuftMaterial CrochetCotton { get; } = OfTex("crochet-cotton", "crochet cotton (150 tex)", 150, 0.6);

    /// <summary>Thin wool, 250 tex.</summary>
    public static TuftMaterial ThinWool { get; } = OfTex("thin-wool", "thin wool (250 tex)", 250, 2);

    /// <summary>Thick wool, 500 tex: seen from another car.</summary>
    public static TuftMaterial ThickWool { get; } = OfTex("thick-wool", "thick wool (500 tex)", 500, 3);

    /// <summary>The threads with figures.</summary>
    public static IReadOnlyList<TuftMaterial> All { get; } = [SewingCotton, CrochetCotton, ThinWool, ThickWool];

    /// <summary>A thread by its yarn number.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="name">Name for people.</param>
    /// <param name="tex">Grams in a kilometre, 5 to 2000.</param>
    /// <param name="millimetres">Thickness, 0.1 to 5 mm.</param>
    /// <returns>The thread.</returns>
    /// <validity>Dry thread; wet cotton weighs up to twice as much.</validity>
    /// <uncertainty>Thickness of a fluffy thread: 30 %.</uncertainty>
    /// <source key="from-memory" place="definition of tex">1 tex = 1 g in 1000 m</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static TuftMaterial OfTex(string id, string name, double tex, double millimetres)
    {
        Valid.Within(tex, 5, 2000, "tex");
        Valid.Within(millimetres, 0.1, 5, "mm");
        return new(id, name, LineLoad.FromNewtonsPerMetre(tex * 1e-6 * Gravity), Length.FromMillimetres(millimetres));
    }
}
