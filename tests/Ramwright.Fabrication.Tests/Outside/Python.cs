using System.Diagnostics;
using System.Text.Json;

namespace Ramwright.Tests.Fabrication.Outside;

/// <summary>Libraries of another language that read our files: ezdxf the cut files, shapely the places of parts.</summary>
internal static class Python
{
    public const string Missing = "Python's ezdxf and shapely are not installed (Debian packages python3-ezdxf, python3-shapely): cut files are not read back by an independent reader";

    /// <summary>The interpreter that has both; null where there is none.</summary>
    public static readonly string? Interpreter = new[] { "/usr/bin/python3", "python3", "python" }.FirstOrDefault(p => Run(p, ["-c", "import ezdxf, shapely"]) is (0, _));

    /// <summary>Runs one of the scripts beside this file and reads the JSON it prints.</summary>
    public static JsonElement Script(string name, params string[] arguments)
    {
        string script = Path.Combine(Repository.Folder("tests"), "Ramwright.Fabrication.Tests", "Outside", name);
        (int code, string text) = Run(Interpreter!, [script, .. arguments])!.Value;
        Assert.True(code == 0, text);
        return JsonDocument.Parse(text).RootElement;
    }

    private static (int Code, string Text)? Run(string program, string[] arguments)
    {
        try
        {
            using var process = new Process { StartInfo = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true } };
            process.Start();
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string text = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, process.ExitCode == 0 ? text : errors.Result);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}

/// <summary>A test that has other libraries look at our files; skipped, with the reason, where they are not installed.</summary>
public sealed class OutsideFactAttribute : FactAttribute
{
    public OutsideFactAttribute()
    {
        if (Python.Interpreter is null)
            Skip = Python.Missing;
    }
}

/// <summary>The same for a test with cases.</summary>
public sealed class OutsideTheoryAttribute : TheoryAttribute
{
    public OutsideTheoryAttribute()
    {
        if (Python.Interpreter is null)
            Skip = Python.Missing;
    }
}
