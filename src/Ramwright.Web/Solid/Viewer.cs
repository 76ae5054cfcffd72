namespace Ramwright.Web.Solid;

/// <summary>The script that shows a frame as a solid. It is bundled with its library when the program is built, where npm is there.</summary>
internal static class Viewer
{
    /// <summary>Name of the script, in the program and on the bench.</summary>
    public const string Script = "viewer.js";

    /// <summary>Whether this program was built with it.</summary>
    public static bool IsBuiltIn => typeof(Viewer).Assembly.GetManifestResourceInfo(Script) is not null;

    /// <summary>Sends it.</summary>
    public static IResult Serve() => typeof(Viewer).Assembly.GetManifestResourceStream(Script) is { } script
        ? Results.Stream(script, "text/javascript; charset=utf-8")
        : Results.NotFound();
}
