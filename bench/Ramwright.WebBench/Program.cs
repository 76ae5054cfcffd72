using Ramwright.WebBench;

// screens: pictures of the main pages into docs/screens. speed: how quick the bench is, in numbers.
switch (args)
{
    case ["screens"]:
        await Screens.Take();
        return 0;
    case ["speed"]:
        return await Speed.Measure() ? 0 : 1;
    default:
        Console.Error.WriteLine("dotnet run -c Release --project bench/Ramwright.WebBench -- screens | speed");
        return 2;
}
