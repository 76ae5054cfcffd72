using Ramwright.Files.Dossier;

namespace Ramwright.Files.Making;

/// <summary>Makes some of the files of a press.</summary>
/// <param name="of">The press.</param>
public delegate IEnumerable<OutFile> Maker(MakeOf of);

/// <summary>All that <c>make</c> writes: one more kind of file is one more line.</summary>
public static class Makers
{
    /// <summary>The makers, in the order in which their files are listed.</summary>
    public static readonly IReadOnlyList<Maker> All =
    [
        PartFiles.Make,
        PlateFiles.Make,
        NestFiles.Make,
        BarFiles.Make,
        PaperFiles.Make,
    ];

    /// <summary>Every file of a press.</summary>
    /// <exception cref="InvalidOperationException">Two makers use one name.</exception>
    public static IReadOnlyList<OutFile> Files(MakeOf of)
    {
        OutFile[] files = [.. All.SelectMany(make => make(of))];
        if (files.GroupBy(f => f.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new InvalidOperationException($"two files are called {twice.Key}");
        return files;
    }
}
