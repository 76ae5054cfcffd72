using System.Globalization;
using BenchmarkDotNet.Running;
using Ramwright.Bench;

// dotnet run -c Release --project bench/Ramwright.Bench -- --filter '*FrameSolve*' --job short
// dotnet run -c Release --project bench/Ramwright.Bench -- steady 1000000
// dotnet run -c Release --project bench/Ramwright.Bench -- steps
// dotnet run -c Release --project bench/Ramwright.Bench -- sweep 100 100
// dotnet run -c Release --project bench/Ramwright.Bench -- make
// dotnet run -c Release --project bench/Ramwright.Bench -- nest 200
// dotnet run -c Release --project bench/Ramwright.Bench -- thousand 50 16
// dotnet run -c Release --project bench/Ramwright.Bench -- proving 2000
// dotnet run -c Release --project bench/Ramwright.Bench -- solids 300000
// dotnet run -c Release --project bench/Ramwright.Bench -- springs
int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;
switch (args)
{
    case ["steady", ..]:
        return Steady.Run(Number(1, 1_000_000), Number(2, Environment.ProcessorCount));
    case ["steps", ..]:
        return Steady.Steps(Number(1, 5_000));
    case ["sweep", ..]:
        return OneSqueeze.Sweep(Number(1, 100), Number(2, 100));
    case ["make", ..]:
        return MakeExamples.Run();
    case ["puzzles", ..]:
        return NestSixty.Puzzles(Number(1, 1000));
    case ["thousand", ..]:
        return NestSixty.Many(Number(1, 0), Number(2, 4));
    case ["nest", ..]:
        return NestSixty.Run(Number(1, 200), Number(2, 1));
    case ["proving", ..]:
        return Coverage.Run(Number(1, 2_000));
    case ["springs", ..]:
        return CheckOnSprings.Run(Number(1, 1_000));
    case ["solids", ..]:
        return SolidSpeed.Run(Number(1, 110_000), write: true);
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        return 0;
}
