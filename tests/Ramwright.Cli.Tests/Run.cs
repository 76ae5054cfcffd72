using Ramwright.Cli;
using Spectre.Console.Testing;

namespace Ramwright.Tests.Cli;

/// <summary>Runs a command on an 80-column screen without colour.</summary>
internal static class Run
{
    public static (int Code, string Text) Command(params string[] args)
    {
        using var screen = new TestConsole();
        screen.Profile.Width = 80;
        int code = RamwrightApp.Run(args, screen);
        return (code, screen.Output);
    }

    public static string Example(string name) => Path.Combine(Repository.Folder("examples"), name);
}
