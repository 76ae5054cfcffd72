using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>The command line, with its commands.</summary>
internal static class RamwrightApp
{
    public static int Run(string[] args, IAnsiConsole? console = null)
    {
        IAnsiConsole screen = console ?? AnsiConsole.Console;
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.SetApplicationName("ramwright");
            config.UseStrictParsing();      // an option that is not known is said, not skipped
            config.ConfigureConsole(screen);
            config.SetExceptionHandler((fault, _) =>
            {
                screen.WriteLine(fault.Message);
                screen.WriteLine("Try: ramwright --help");
                return ExitCode.WrongInput;
            });
            config.AddCommand<CheckCommand>("check")
                .WithDescription("What the press will really do, and what gives first.")
                .WithExample("check", "examples/wherry-yard.press.yaml");
            config.AddCommand<ExplainCommand>("explain")
                .WithDescription("The full working of one rung: formula, values, source.")
                .WithExample("explain", "examples/wherry-yard.press.yaml", "crown-bending");
            config.AddCommand<DrawCommand>("draw")
                .WithDescription("Front and side of the press as a dimensioned drawing (SVG).")
                .WithExample("draw", "examples/wherry-yard.press.yaml", "--out", "wherry-yard.svg");
            config.AddCommand<OffsetCommand>("offset")
                .WithDescription("The allowed ram force against how far off centre the work stands.")
                .WithExample("offset", "examples/wherry-yard.press.yaml");
            config.AddCommand<SolidCommand>("solid")
                .WithDescription("The frame as solid steel: how far it opens, where it is stressed, beside what the beams say.")
                .WithExample("solid", "examples/railing-shop.press.yaml");
            config.AddCommand<JobCommand>("job")
                .WithDescription("Whether the press can do its jobs: force against travel, what limits it, how.")
                .WithExample("job", "examples/railing-shop.press.yaml");
            config.AddCommand<LiftCommand>("lift")
                .WithDescription("What to change so that the press carries what is wanted.")
                .WithExample("lift", "examples/railing-shop.press.yaml");
            config.AddCommand<OpenCommand>("open")
                .WithDescription("The press on screen, live: drawing, ladder and every value in the browser.")
                .WithExample("open", "examples/wherry-yard.press.yaml");
            config.AddCommand<NewCommand>("new")
                .WithDescription("Write a commented starter file to fill in.")
                .WithExample("new", "my.press.yaml", "--frame", "closed");
            config.AddCommand<StockCommand>("stock")
                .WithDescription("Look up sections, steels, bolts, hoses and oils.")
                .WithExample("stock", "\"UPN 200\"");
        });
        return app.Run(args);
    }
}
