namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>
/// The liquids that stand for the carriers. Vapour pressure: Perry table 2-8; viscosity: table 2-313; density: table 2-32 form 105;
/// heat of evaporation: table 2-150 (all read in an open copy of the tables). Diffusion volumes: summed after Fuller from
/// C 15.9, H 2.31, O 6.11; water 13.1.
/// </summary>
internal static class Liquids
{
    public static LiquidConstants Isopropanol { get; } = new(
        0.06010, (3 * 15.9) + (8 * 2.31) + 6.11, 508.3,
        [96.094, -8575.4, -10.292, 1.6665e-17, 6],
        [-8.8918, 2357.6, -0.91376, 0, 0],
        [1179.9, 0.2644, 508.3, 0.24653],
        [72542, 0.79137, -0.66092, 0.34223]);

    public static LiquidConstants Water { get; } = new(
        0.018015, 13.1, 647.096,
        [73.649, -7258.2, -7.3037, 4.1653e-6, 2],
        [-52.843, 3703.6, 5.866, -5.879e-29, 10],
        [],
        [52053, 0.3199, -0.212, 0.25795]);

    public static LiquidConstants Decane { get; } = new(
        0.14228, (10 * 15.9) + (22 * 2.31), 617.7,
        [112.73, -9749.6, -13.245, 7.1266e-6, 2],
        [-9.6489, 1181.1, -0.24367, 9.0522e34, -15],
        [410.84, 0.25175, 617.7, 0.28571],
        [66126, 0.39797, 0, 0]);

    public static LiquidConstants Undecane { get; } = new(
        0.15631, (11 * 15.9) + (24 * 2.31), 639,
        [131, -11143, -15.855, 8.1871e-6, 2],
        [52.176, -4951.9, -8.5676, 570980, -2],
        [367.03, 0.24876, 639, 0.28571],
        [72284, 0.40607, 0, 0]);

    public static LiquidConstants Dodecane { get; } = new(
        0.17034, (12 * 15.9) + (26 * 2.31), 658,
        [137.47, -11976, -16.698, 8.0906e-6, 2],
        [-7.8244, 1191.9, -0.49963, 3.9572e23, -10],
        [332.67, 0.24664, 658, 0.28571],
        [77337, 0.40681, 0, 0]);

    public static LiquidConstants Tetradecane { get; } = new(
        0.19839, (14 * 15.9) + (30 * 2.31), 693,
        [140.47, -13231, -16.859, 6.5877e-6, 2],
        [-14.493, 1710.8, 0.4417, 3.0895e28, -12],
        [272.48, 0.24007, 693, 0.28571],
        [90539, 0.44467, 0, 0]);

    public static LiquidConstants Hexadecane { get; } = new(
        0.22645, (16 * 15.9) + (34 * 2.31), 723,
        [156.06, -15015, -18.941, 6.8172e-6, 2],
        [-20.182, 2203.5, 1.2289, 0, 0],
        [232.89, 0.23659, 723, 0.28571],
        [101560, 0.45726, 0, 0]);
}
