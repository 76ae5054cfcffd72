using System.Diagnostics;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Web.Solid;

/// <summary>A frame being solved as solid steel: what is being done, how far it is, about how long is left, what is known so far. One at a time, as it takes all cores.</summary>
internal sealed class SolidRun : IDisposable
{
    private static readonly SemaphoreSlim Turn = new(1);

    private readonly CancellationTokenSource _stop = new();
    private readonly Stopwatch _clock = new();
    private SolidCheck? _soFar;

    /// <summary>What is being done.</summary>
    public string Stage { get; private set; } = "waiting for a moment";

    /// <summary>How much is done, 0 to 1.</summary>
    public double Share { get; private set; }

    /// <summary>About how long is left, in words; empty while nobody can say.</summary>
    public string Left => LeftText(_clock.Elapsed.TotalSeconds, Share);

    /// <summary>What is known so far.</summary>
    public SolidCheck? SoFar => Volatile.Read(ref _soFar);

    /// <summary>Told when it is ended early.</summary>
    public CancellationToken Stopped => _stop.Token;

    /// <summary>Ends it early.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Solves, off the page's own thread.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="all">All load cases of the file; otherwise the centred one.</param>
    /// <param name="joints">Joints whose springs are known, and to which new ones are added.</param>
    public async Task<SolidCheck> Solve(Rig rig, bool all, JointBook joints)
    {
        CancellationToken stop = _stop.Token;
        Stage = "waiting until another frame is solved";
        await Turn.WaitAsync(stop);
        try
        {
            _clock.Start();
            return await Task.Run(() => SolidCheck.Of(rig, all: all, progress: Heard, book: joints, stop: stop), stop);
        }
        finally
        {
            Turn.Release();
        }
    }

    /// <summary>About how long is left when a share has taken so long, in words.</summary>
    internal static string LeftText(double seconds, double share)
    {
        // the first moments say nothing about the rest
        if (seconds < 1 || share < 0.05)
            return "";
        double left = seconds * (1 - share) / share;
        return left < 1.5 ? "nearly there" : $"about {(left < 10 ? Math.Round(left) : 5 * Math.Round(left / 5)):0} s left";
    }

    public void Dispose() => _stop.Dispose();

    private void Heard(SolidProgress progress)
    {
        (Stage, Share) = (progress.Stage, progress.Share);
        if (progress.SoFar is { } known)
            Volatile.Write(ref _soFar, known);
    }
}
