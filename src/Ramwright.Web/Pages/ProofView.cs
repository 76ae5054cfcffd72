using Microsoft.AspNetCore.Components;
using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Web.Pages;

/// <summary>A page about one press and its readings: it follows both, whoever adds to them.</summary>
public abstract class ProofView : PressView
{
    private Timer? _watch;
    private (PressCheck?, UnitSystem, DateTime, long) _of;
    private string? _path;

    /// <summary>The readings and what follows from them; null where the press itself cannot be reckoned.</summary>
    public Proof? Proof { get; private set; }

    /// <summary>Why the last reading was not written; empty where it was.</summary>
    public string Refused { get; private set; } = "";

    protected override void Shown()
    {
        _path = Folder.ReadingsOf(Name);
        Look();
    }

    protected override void OnAfterRender(bool firstRender)
    {
        base.OnAfterRender(firstRender);
        if (firstRender && RendererInfo.IsInteractive)
            _watch = new Timer(_ => InvokeAsync(() =>
            {
                if (Look())
                    StateHasChanged();
            }), null, TimeSpan.FromSeconds(2), TimeSpan.FromSeconds(2));
    }

    /// <summary>Reads the log anew where it or the press is another than it was.</summary>
    private bool Look()
    {
        if (Now?.Check is not { } check || _path is null)
            return false;
        var file = new FileInfo(_path);
        (PressCheck?, UnitSystem, DateTime, long) now = (check, Units, file.Exists ? file.LastWriteTimeUtc : default, file.Exists ? file.Length : 0);
        if (now == _of)
            return false;
        _of = now;
        Proof = new Proof(check, ReadingLog.Load(_path, Units), Units, DateOnly.FromDateTime(DateTime.Now));
        Learned();
        return true;
    }

    /// <summary>Called when there are other readings, or another press.</summary>
    protected virtual void Learned()
    {
    }

    /// <summary>Writes readings down, each from its word on; all or none.</summary>
    /// <param name="readings">As they stand in the log behind day and name.</param>
    public async Task<bool> Write(params IReadOnlyList<string> readings)
    {
        bool written = await Written(readings);
        StateHasChanged();      // a part of the page may have asked
        return written;
    }

    private async Task<bool> Written(IReadOnlyList<string> readings)
    {
        if (_path is null)
        {
            Refused = "the readings of this press lie outside the folder of the bench";
            return false;
        }

        if (string.IsNullOrWhiteSpace(View.Who))
        {
            Refused = "say who reads it first";
            return false;
        }

        string[] lines = [.. readings.Select(r => ReadingLine.Text(DateTime.Now, View.Who, r))];
        ReadingLog log = ReadingLog.Load(_path, Units);
        foreach (string line in lines)
        {
            PlacedFault? fault = null;
            if (Proof is { } proof)
                fault = ReadingGate.Refuses(proof.Check, log, line, "", Units);
            else
                _ = ReadingLine.Read(line, 1, "", out fault, Units);
            if (fault is not null)
            {
                Refused = $"{fault.Found}; wanted: {fault.Wanted}{(fault.Nearest is { } nearest ? $"; nearest: {nearest}" : "")}";
                return false;
            }
        }

        string path = _path;
        Refused = await Task.Run(() => Appended(path, lines));
        Look();
        return Refused.Length == 0;
    }

    private static string Appended(string path, string[] lines)
    {
        try
        {
            foreach (string line in lines)
                ReadingLog.Append(path, line);
            return "";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return $"it could not be written: {e.Message}";
        }
    }

    /// <summary>A value as typed, in the unit shown where it names none.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="dimension">What it measures.</param>
    public string WithUnit(string typed, Dimension dimension) =>
        QuantityText.TryRead(typed, dimension, out _, out _) ? typed.Trim() : $"{typed.Trim()} {Readout.UnitFor(dimension, Units).Symbol}";

    protected override void Dispose(bool disposing)
    {
        _watch?.Dispose();
        base.Dispose(disposing);
    }
}
