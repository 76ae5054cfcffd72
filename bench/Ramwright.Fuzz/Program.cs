using System.Globalization;
using Ramwright.Fuzz;

// dotnet run -c Release --project bench/Ramwright.Fuzz -- 100000 1
// Inputs that fail are left in .build/fuzz, one file each.
int count = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 100_000;
int seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
return new Fuzzing(count, seed).Run();
