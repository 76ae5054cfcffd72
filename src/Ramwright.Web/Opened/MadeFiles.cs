using System.IO.Compression;
using System.Runtime.CompilerServices;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Web.Opened;

/// <summary>What is to be made of each press that is looked at: drawn up once for each answer, shared by all who look.</summary>
public sealed class MadeFiles
{
    private readonly ConditionalWeakTable<PressCheck, MakeOf> _made = [];

    /// <summary>What is to be made of a press as it stands; null while its file cannot be read.</summary>
    public MakeOf? Of(PressNow now, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (now.Read.Check is not { } check)
            return null;
        MakeOf made = _made.GetValue(check, c => new MakeOf(now.Read.Press, c, units) { Day = DateOnly.FromDateTime(DateTime.Now) });
        return made.Units == units ? made : made with { Units = units };
    }

    /// <summary>Looks for better nests; what is found is then what all see and take away.</summary>
    public void Search(PressNow now, UnitSystem units, NestEffort effort)
    {
        if (Of(now, units) is not { } made)
            return;
        MakeOf found = made.With(effort);
        _ = found.Nests;
        _made.AddOrUpdate(found.Check, found);
    }

    /// <summary>One file by its name, or all of them as <c>all.zip</c>; null where there is none of that name.</summary>
    public (byte[] Bytes, string Type)? File(PressNow now, UnitSystem units, string name)
    {
        if (Of(now, units) is not { } made)
            return null;
        if (name == "all.zip")
            return (Zip(Makers.Files(made)), "application/zip");
        // one maker after another, until one makes it
        return Makers.All.SelectMany(make => make(made)).FirstOrDefault(f => f.Name == name) is { } file ? (file.Bytes, TypeOf(name)) : null;
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".svg" => "image/svg+xml",
        ".csv" => "text/csv; charset=utf-8",
        ".pdf" => "application/pdf",
        ".html" => "text/html; charset=utf-8",
        ".dxf" => "image/vnd.dxf",
        _ => "application/octet-stream",
    };

    private static byte[] Zip(IReadOnlyList<OutFile> files)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (OutFile file in files)
            {
                using Stream entry = zip.CreateEntry(file.Name).Open();
                entry.Write(file.Bytes);
            }
        }

        return bytes.ToArray();
    }
}
