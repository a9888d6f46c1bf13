namespace FixPlanner.Files.Writing;

/// <summary>
/// Makes a change on plain values, with no text in sight. It says what a splice of the text must come to, so the
/// two are written apart and checked against each other after every splice.
/// </summary>
internal static class ValueTree
{
    /// <summary>Puts a value at a path, or removes what is there.</summary>
    /// <returns>The new whole and what was changed; null when the path does not fit what is there.</returns>
    public static (YamlValue Whole, YamlChange Change)? Put(YamlValue whole, YamlEdit edit)
    {
        var walk = new Walk(edit);
        return walk.Go(whole, 0) is YamlValue result ? (result, walk.Change!) : null;
    }

    /// <summary>What stands at a path; null when nothing is there.</summary>
    public static YamlValue? At(YamlValue whole, YamlPath path)
    {
        YamlValue? current = whole;
        foreach (PathStep step in path.Steps)
        {
            current = Child(current, step);
            if (current is null)
            {
                return null;
            }
        }

        return current;
    }

    /// <summary>A value with all that the rest of a path asks for around it; null when the rest leads nowhere.</summary>
    public static YamlValue? Wrap(IReadOnlyList<PathStep> steps, int from, YamlValue value)
    {
        if (from == steps.Count)
        {
            return value;
        }

        switch (steps[from])
        {
            case PathStep.ToKey key:
                return Wrap(steps, from + 1, value) is YamlValue inner ? YamlValue.Map(KeyValuePair.Create(key.Key, inner)) : null;
            case PathStep.ToItem { Index: > 0 }:
                return null;
            default:
                return NewItem(steps, from, value) is YamlValue item ? YamlValue.List(item) : null;
        }
    }

    /// <summary>The new item that a step into a list stands for, with the rest of the path in it.</summary>
    public static YamlValue? NewItem(IReadOnlyList<PathStep> steps, int at, YamlValue value)
    {
        if (steps[at] is not PathStep.ToWhere where)
        {
            return Wrap(steps, at + 1, value);
        }

        if (at + 1 == steps.Count)
        {
            return Named(where, value);
        }

        YamlValue named = YamlValue.Map(Entries(where));
        return Put(named, new YamlEdit(YamlPath.Root.Then(steps.Skip(at + 1)), value))?.Whole;
    }

    private static KeyValuePair<string, YamlValue>[] Entries(PathStep.ToWhere where) =>
        [.. where.Conditions.Select(one => KeyValuePair.Create(one.Key, YamlValue.Of(one.Value)))];

    // A map put at rounds[id=before] need not repeat its id, but must not contradict it.
    private static YamlValue.Keyed? Named(PathStep.ToWhere where, YamlValue value)
    {
        if (value is not YamlValue.Keyed map)
        {
            return null;
        }

        KeyValuePair<string, YamlValue>[] named = Entries(where);
        return named.All(one => map.Find(one.Key) is null || map.Find(one.Key) == one.Value)
            ? map with { Entries = [.. named.Where(one => map.Find(one.Key) is null), .. map.Entries] }
            : null;
    }

    public static int IndexOf(YamlValue.Several list, PathStep step) => step switch
    {
        PathStep.ToItem item => item.Index < list.Items.Count ? item.Index : -1,
        PathStep.ToWhere where => list.Items.ToList().FindLastIndex(item => Fits(item, where)),
        _ => -1,
    };

    private static bool Fits(YamlValue item, PathStep.ToWhere where) =>
        item is YamlValue.Keyed map && where.Conditions.All(one => map.Find(one.Key) is YamlValue.Single single && single.Text == one.Value);

    private static YamlValue? Child(YamlValue parent, PathStep step) => (parent, step) switch
    {
        (YamlValue.Keyed map, PathStep.ToKey key) => map.Find(key.Key),
        (YamlValue.Several list, not PathStep.ToKey) when IndexOf(list, step) is >= 0 and int index => list.Items[index],
        _ => null,
    };

    private sealed class Walk(YamlEdit edit)
    {
        private readonly IReadOnlyList<PathStep> steps = edit.Path.Steps;

        public YamlChange? Change { get; private set; }

        public YamlValue? Go(YamlValue current, int at)
        {
            if (at == steps.Count)
            {
                return Replace(current, at);
            }

            return current switch
            {
                YamlValue.Nothing => Fill(current, at),
                YamlValue.Keyed map when steps[at] is PathStep.ToKey key => InMap(map, key.Key, at),
                YamlValue.Several list when steps[at] is not PathStep.ToKey => InList(list, at),
                _ => null,
            };
        }

        private YamlValue? Replace(YamlValue current, int at)
        {
            YamlValue? value = at > 0 && steps[at - 1] is PathStep.ToWhere where && edit.Value is not null
                ? Named(where, edit.Value)
                : edit.Value ?? YamlValue.Unset;
            Change = value is null ? null : new YamlChange(edit.Path.Cut(at), current, value);
            return value;
        }

        private YamlValue? Fill(YamlValue current, int at)
        {
            if (edit.Value is null)
            {
                Change = new YamlChange(edit.Path.Cut(at), current, current);
                return current;
            }

            YamlValue? value = Wrap(steps, at, edit.Value);
            Change = value is null ? null : new YamlChange(edit.Path.Cut(at), current, value);
            return value;
        }

        private YamlValue.Keyed? InMap(YamlValue.Keyed map, string key, int at)
        {
            if (map.Find(key) is YamlValue child)
            {
                if (at + 1 == steps.Count && edit.Value is null)
                {
                    Change = new YamlChange(edit.Path.Cut(at + 1), child, null);
                    return map with { Entries = [.. map.Entries.Where(entry => entry.Key != key)] };
                }

                return Go(child, at + 1) is YamlValue changed
                    ? map with { Entries = [.. map.Entries.Select(entry => entry.Key == key ? KeyValuePair.Create(key, changed) : entry)] }
                    : null;
            }

            if (edit.Value is null)
            {
                Change = new YamlChange(edit.Path.Cut(at + 1), null, null);
                return map;
            }

            YamlValue? added = Wrap(steps, at + 1, edit.Value);
            Change = new YamlChange(edit.Path.Cut(at + 1), null, added);
            return added is null ? null : map with { Entries = [.. map.Entries, KeyValuePair.Create(key, added)] };
        }

        private YamlValue.Several? InList(YamlValue.Several list, int at)
        {
            int index = IndexOf(list, steps[at]);
            if (index >= 0)
            {
                if (at + 1 == steps.Count && edit.Value is null)
                {
                    Change = new YamlChange(edit.Path.Cut(at + 1), list.Items[index], null);
                    return list with { Items = [.. list.Items.Where((_, i) => i != index)] };
                }

                return Go(list.Items[index], at + 1) is YamlValue changed
                    ? list with { Items = [.. list.Items.Select((item, i) => i == index ? changed : item)] }
                    : null;
            }

            YamlPath place = steps[at] is PathStep.ToWhere ? edit.Path.Cut(at + 1) : edit.Path.Cut(at, new PathStep.ToItem(list.Items.Count));
            if (edit.Value is null)
            {
                Change = new YamlChange(place, null, null);
                return list;
            }

            if (steps[at] is PathStep.ToItem item && item.Index != list.Items.Count)
            {
                return null;
            }

            YamlValue? added = NewItem(steps, at, edit.Value);
            Change = new YamlChange(place, null, added);
            return added is null ? null : list with { Items = [.. list.Items, added] };
        }
    }
}
