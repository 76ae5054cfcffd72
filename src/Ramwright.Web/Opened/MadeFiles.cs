using Ramwright.Files.Making;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Web.Opened;

/// <summary>Hands out what <c>make</c> would write, one file at a time, from the press as it stands on the bench.</summary>
internal static class MadeFiles
{
    /// <summary>Answers under <c>/press/NAME/files/FILE</c>.</summary>
    public static void Map(WebApplication app) => app.MapGet("/press/{name}/files/{**file}", (string name, string file, string? units, BenchFolder folder) => One(folder, name, file, units));

    private static IResult One(BenchFolder folder, string name, string file, string? units)
    {
        PressNow? now;
        try
        {
            now = folder.Find(name)?.Now;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Results.Text($"{name} cannot be read: {e.Message}", statusCode: StatusCodes.Status404NotFound);
        }

        if (now?.Read.Check is not { } check)
            return Results.Text(now is null ? $"There is no press called {name} in this folder." : "The press file has faults: nothing is made from it until they are mended.", statusCode: StatusCodes.Status404NotFound);
        UnitSystem read = units switch { "imperial" => UnitSystem.Imperial, "metric" => UnitSystem.Metric, _ => now.Read.Press.Reading.Units };
        try
        {
            var of = new MakeOf(now.Read.Press, check, read) { Day = DateOnly.FromDateTime(DateTime.Now) };
            // makers write as they are asked: what comes after the file that is wanted is not made
            return Makers.All.SelectMany(make => make(of)).FirstOrDefault(f => f.Name == file) is { } made
                ? Results.File(made.Bytes, TypeOf(file), $"{name}-{Path.GetFileName(file)}")
                : Results.Text($"No file called {file} is made for {name}.", statusCode: StatusCodes.Status404NotFound);
        }
        catch (Exception e) when (e is NotSupportedException or PressFaultsException or ArgumentException)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status422UnprocessableEntity);
        }
    }

    private static string TypeOf(string file) => Path.GetExtension(file) switch
    {
        ".pdf" => "application/pdf",
        ".svg" => "image/svg+xml",
        ".html" => "text/html; charset=utf-8",
        ".csv" => "text/csv; charset=utf-8",
        ".dxf" => "image/vnd.dxf",
        _ => "application/octet-stream",
    };
}
