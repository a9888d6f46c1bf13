using FixPlanner.Core.Pictures;

namespace FixPlanner.Report.Drawings;

/// <summary>The car in plain characters, with the numbers of its marked zones.</summary>
internal static class CarCharacters
{
    public static IReadOnlyList<string> Of(CarPicture picture, IReadOnlyList<ZoneMark> marks)
    {
        char[][] rows = [.. picture.Large.Rows.Select(r => r.ToCharArray())];
        bool[][] taken = [.. rows.Select(r => new bool[r.Length])];
        foreach (ZoneMark mark in marks)
        {
            if (!picture.Large.Zones.TryGetValue(mark.Zone, out IReadOnlyList<CellBox>? boxes))
            {
                continue;
            }

            string number = $"{mark.Number}";
            if (Free(boxes, number.Length, taken) is { } at)
            {
                for (int i = 0; i < number.Length; i++)
                {
                    rows[at.Y][at.X + i] = number[i];
                }

                for (int x = Math.Max(0, at.X - 1); x < Math.Min(taken[at.Y].Length, at.X + number.Length + 1); x++)
                {
                    taken[at.Y][x] = true;
                }
            }
        }

        return [.. rows.Select(r => new string(r))];
    }

    // The middle of the zone first, then outward from it.
    private static (int X, int Y)? Free(IReadOnlyList<CellBox> boxes, int length, bool[][] taken)
    {
        CellBox all = boxes[boxes.Count / 2];
        (double X, double Y) middle = (all.X + (all.Width / 2.0), all.Y + (all.Height / 2.0));
        return boxes.SelectMany(b => Enumerable.Range(b.Y, b.Height).SelectMany(y => Enumerable.Range(b.X, b.Width).Select(x => (X: x, Y: y))))
            .Where(p => p.Y < taken.Length && p.X + length <= taken[p.Y].Length && !taken[p.Y].AsSpan(p.X, length).Contains(true))
            .OrderBy(p => Math.Abs(p.X + (length / 2.0) - middle.X) + (3 * Math.Abs(p.Y + 0.5 - middle.Y))).ThenBy(p => p.Y).ThenBy(p => p.X)
            .Select(p => ((int X, int Y)?)p).FirstOrDefault();
    }
}
