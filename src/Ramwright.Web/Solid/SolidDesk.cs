using System.Collections.Concurrent;
using Ramwright.Ladders;
using Ramwright.Solids;

namespace Ramwright.Web.Solid;

/// <summary>Solids of the presses on the bench, solved one at a time in the background, and the last of each press kept.</summary>
public sealed class SolidDesk : IDisposable
{
    private readonly ConcurrentDictionary<string, SolidJob> _jobs = new();
    private readonly SemaphoreSlim _turn = new(1);
    private readonly JointBook _book = new();

    /// <summary>The last one of a press; null where none was asked for.</summary>
    public SolidJob? Of(string press) => _jobs.GetValueOrDefault(press);

    /// <summary>Starts one; what ran for this press is stopped.</summary>
    public SolidJob Start(string press, PressCheck check)
    {
        Of(press)?.Stop();
        var job = new SolidJob(check);
        _jobs[press] = job;
        _ = Task.Run(async () =>
        {
            await _turn.WaitAsync();
            try
            {
                job.Run(_book);
            }
            finally
            {
                _turn.Release();
            }
        });
        return job;
    }

    /// <summary>Stops whatever still runs.</summary>
    public void Dispose()
    {
        foreach (SolidJob job in _jobs.Values)
        {
            job.Stop();
            job.Dispose();
        }

        _turn.Dispose();
    }
}

/// <summary>One solid, waiting, running or done.</summary>
public sealed class SolidJob(PressCheck check) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();

    /// <summary>The press as it was when it was asked for.</summary>
    public PressCheck Check { get; } = check;

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share { get; private set; }

    /// <summary>What it is doing.</summary>
    public string Stage { get; private set; } = "waiting for its turn";

    /// <summary>The answer.</summary>
    public SolidCheck? Answer { get; private set; }

    /// <summary>The surface as bytes: see <see cref="SurfaceBytes"/>.</summary>
    public byte[]? Surface { get; private set; }

    /// <summary>Why there is none.</summary>
    public string? Fault { get; private set; }

    /// <summary>Whether it still goes on.</summary>
    public bool IsRunning => Answer is null && Fault is null;

    /// <summary>Ends it.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Lets go of what could have stopped it.</summary>
    public void Dispose() => _stop.Dispose();

    internal void Run(JointBook book)
    {
        try
        {
            SolidCheck solid = SolidCheck.Of(Check.Rig, progress: p => (Stage, Share) = (p.Stage, p.Share), book: book, stop: _stop.Token);
            Surface = SurfaceBytes.Of(solid);
            Answer = solid;
        }
        catch (SolidFaultException fault)
        {
            Fault = fault.Message;
        }
        catch (OperationCanceledException)
        {
            Fault = "stopped";
        }
    }
}
