namespace FixPlanner.Wizard;

/// <summary>Works off one thing at a time beside the keys, so that they keep a core of their own. What waits gives way to what is newer.</summary>
internal sealed class NewestOnly
{
    private readonly Lock access = new();
    private Action? waiting;
    private bool working;

    /// <summary>Does it as soon as what is being done is finished, unless something newer comes first.</summary>
    public void Do(Action work)
    {
        lock (access)
        {
            waiting = work;
            if (working)
            {
                return;
            }

            working = true;
        }

        _ = Task.Run(WorkOff);
    }

    private void WorkOff()
    {
        while (true)
        {
            Action next;
            lock (access)
            {
                if (waiting is not { } newest)
                {
                    working = false;
                    return;
                }

                (next, waiting) = (newest, null);
            }

            next();
        }
    }
}
