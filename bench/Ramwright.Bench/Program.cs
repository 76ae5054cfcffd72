using BenchmarkDotNet.Running;

// dotnet run -c Release --project bench/Ramwright.Bench -- --filter '*FrameSolve*' --job short
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
