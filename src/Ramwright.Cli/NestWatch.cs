using Ramwright.Fabrication.Nesting;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Shows how far the search for nests has come, and stops it when s or Esc is pressed. Silent where nobody watches.</summary>
internal sealed class NestWatch(IAnsiConsole screen, MakeSettings settings)
{
    private readonly bool _watched = settings.Rounds > 0 && !settings.Json && screen.Profile.Out.IsTerminal && !Console.IsInputRedirected;
    private long _shown;
    private bool _stopped, _wrote;

    /// <summary>Told of each round; false stops the search.</summary>
    public bool GoesOn(NestProgress progress)
    {
        if (!_watched)
            return true;
        while (!_stopped && Console.KeyAvailable)
            _stopped = Console.ReadKey(intercept: true) is { Key: ConsoleKey.S or ConsoleKey.Escape };
        long now = Environment.TickCount64;
        if (now - _shown > 200)
        {
            _shown = now;
            _wrote = true;
            screen.Profile.Out.Writer.Write($"\rnests: plan {progress.Round} of {progress.Rounds}, {progress.Placed} of {progress.Parts} parts placed, {progress.Filled * 100:0.0} % of the sheets used; s stops   ");
            screen.Profile.Out.Writer.Flush();
        }

        return !_stopped;
    }

    /// <summary>Takes the line away.</summary>
    public void Done()
    {
        if (_wrote)
            screen.Profile.Out.Writer.Write("\r" + new string(' ', 100) + "\r");
    }
}
