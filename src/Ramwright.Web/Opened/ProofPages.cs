using Ramwright.Files.Readings;
using Ramwright.Quantities;

namespace Ramwright.Web.Opened;

/// <summary>Sheet and record of a test as pages that stand by themselves, to be printed or kept.</summary>
internal static class ProofPages
{
    /// <summary>Their style stands in them; nothing else may run or be fetched.</summary>
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Serves them.</summary>
    public static void MapProofPages(this WebApplication app)
    {
        app.MapGet("/press/{name}/sheet.html", (string name, string? units, BenchFolder folder, HttpContext context) => Page(name, units, folder, context, PlanSheet.Html));
        app.MapGet("/press/{name}/record.html", (string name, string? units, BenchFolder folder, HttpContext context) => Page(name, units, folder, context, Certificate.Html));
    }

    private static IResult Page(string name, string? units, BenchFolder folder, HttpContext context, Func<Proof, string> html)
    {
        try
        {
            if (folder.Find(name)?.Now is not { Check: { } check } now || folder.ReadingsOf(name) is not { } path)
                return Results.NotFound();
            UnitSystem read = units == "imperial" ? UnitSystem.Imperial : units == "metric" ? UnitSystem.Metric : now.Read.Press.Reading.Units;
            var proof = new Proof(check, ReadingLog.Load(path, read), read, DateOnly.FromDateTime(DateTime.Now));
            context.Response.Headers.ContentSecurityPolicy = Policy;
            return Results.Content(html(proof), "text/html; charset=utf-8");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Results.NotFound();
        }
    }
}
