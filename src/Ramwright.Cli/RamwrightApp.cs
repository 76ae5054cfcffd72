using Ramwright.Files;
using Ramwright.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>The command line, with its commands.</summary>
internal static class RamwrightApp
{
    public static int Run(string[] args, IAnsiConsole? console = null)
    {
        IAnsiConsole screen = console ?? AnsiConsole.Console;
        if (args is ["help", .. string[] about])
            args = [.. about, "--help"];
        var commands = new List<string>();
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.SetApplicationName("ramwright");
            config.UseStrictParsing();      // an option that is not known is said, not skipped
            config.ConfigureConsole(screen);
            config.SetExceptionHandler((fault, _) =>
            {
                // what is missing of the command itself is said by the help of that command
                string about = args.Length > 0 && commands.Contains(args[0]) ? $"ramwright help {args[0]}" : "ramwright help";
                return screen.Refuse(args.Contains("--json"), fault.Message, $"Try: {about}");
            });
            Add<CheckCommand>(config, "check")
                .WithDescription("What the press will really do, and what gives first.")
                .WithExample("check", "examples/wherry-yard.press.yaml");
            Add<ExplainCommand>(config, "explain")
                .WithDescription("The full working of one rung: formula, values, source.")
                .WithExample("explain", "examples/wherry-yard.press.yaml", "crown-bending");
            Add<DrawCommand>(config, "draw")
                .WithDescription("Front and side of the press as a dimensioned drawing (SVG).")
                .WithExample("draw", "examples/wherry-yard.press.yaml", "--out", "wherry-yard.svg");
            Add<OffsetCommand>(config, "offset")
                .WithDescription("The allowed ram force against how far off centre the work stands.")
                .WithExample("offset", "examples/wherry-yard.press.yaml");
            Add<SolidCommand>(config, "solid")
                .WithDescription("The frame as solid steel: how far it opens, where it is stressed, beside what the beams say.")
                .WithExample("solid", "examples/railing-shop.press.yaml");
            Add<JobCommand>(config, "job")
                .WithDescription("Whether the press can do its jobs: force against travel, what limits it, how.")
                .WithExample("job", "examples/railing-shop.press.yaml");
            Add<LiftCommand>(config, "lift")
                .WithDescription("What to change so that the press carries what is wanted, each change tried.")
                .WithExample("lift", "examples/railing-shop.press.yaml");
            Add<MakeCommand>(config, "make")
                .WithDescription("Cut list, plate files and nests: what is carried to the saw, the table and the drill.")
                .WithExample("make", "examples/wherry-yard.press.yaml", "--out", "wherry-yard");
            Add<ProveCommand>(config, "prove")
                .WithDescription("Prove the press and keep it running: test plan, readings, true force, service, faults.")
                .WithExample("prove", "examples/wherry-yard.press.yaml", "--plan");
            Add<OpenCommand>(config, "open")
                .WithDescription("The press on screen, live: drawing, ladder and every value in the browser.")
                .WithExample("open", "examples/wherry-yard.press.yaml");
            Add<NewCommand>(config, "new")
                .WithDescription("Write a first press file to fill in.")
                .WithExample("new", "my.press.yaml", "--frame", "closed");
            Add<StockCommand>(config, "stock")
                .WithDescription("Look up sections, steels, bolts, hoses and oils.")
                .WithExample("stock", "\"UPN 200\"");
        });
        if (args.Length > 0 && !args[0].StartsWith('-') && !commands.Contains(args[0]))
        {
            return screen.Refuse(args.Contains("--json"), args[0].EndsWith(PressFile.Ending, StringComparison.OrdinalIgnoreCase)
                ? $"what is to be done with {args[0]}? Write: ramwright check {args[0]}"
                : $"there is no command \"{args[0]}\"; nearest: {NearestWord.Ranked(args[0], commands, 1)[0]}", "Try: ramwright help");
        }

        return app.Run(args);

        ICommandConfigurator Add<T>(IConfigurator config, string name)
            where T : class, ICommand
        {
            commands.Add(name);
            return config.AddCommand<T>(name);
        }
    }
}
