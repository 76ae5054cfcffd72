using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>A press file with everything it leans on: its own stock tables read, its numbers settled.</summary>
/// <param name="Reading">The file as it was read, with the places of its values.</param>
/// <param name="Shelf">Stock, the person's own tables included.</param>
/// <param name="Rig">The press with every number settled; null when there are faults.</param>
/// <param name="Faults">Everything that is wrong, in the file, in its tables, and between the two.</param>
public sealed record PressOnDisk(PressReading Reading, Shelf Shelf, Rig? Rig, IReadOnlyList<PlacedFault> Faults)
{
    /// <summary>Joints that were found from solids and are kept beside the file; null where none are.</summary>
    public JointBook? Joints { get; init; }

    /// <summary>Opens a press file. Never throws for what stands in it.</summary>
    /// <param name="path">Its path; stock tables it names lie beside it.</param>
    public static PressOnDisk Open(string path) => Settle(shelfWith => PressFile.Load(path, shelfWith), Folder(path), path, null);

    /// <summary>Settles the text of a press file as if it lay at a path. Never throws for what stands in it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">Where it lies or will lie; stock tables it names lie beside it.</param>
    /// <param name="fileName">What the file is called in messages.</param>
    /// <param name="mayRead">Whether a stock table may be opened, by its full path; null where any may.</param>
    /// <param name="kept">The joints beside it as they were last read; null reads them now.</param>
    public static PressOnDisk Read(string text, string path, string fileName, Predicate<string>? mayRead = null, KeptJoints? kept = null) =>
        Settle(shelfWith => PressFile.Read(text, fileName, shelfWith), Folder(path), fileName, mayRead, kept);

    /// <summary>The same for the bytes of a file.</summary>
    public static PressOnDisk Read(byte[] bytes, string path, string fileName, Predicate<string>? mayRead = null, KeptJoints? kept = null) =>
        Settle(shelfWith => PressFile.Read(bytes, fileName, shelfWith), Folder(path), fileName, mayRead, kept);

    private static string Folder(string path) => Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";

    private static PressOnDisk Settle(
        Func<Func<IReadOnlyList<string>, Shelf?>, PressReading> read, string folder, string fileName, Predicate<string>? mayRead, KeptJoints? kept = null)
    {
        Shelf shelf = StockTables.Built;
        var tableFaults = new List<PlacedFault>();
        PressReading reading = read(tables =>
        {
            foreach (string table in tables)
                shelf = WithTable(shelf, folder, table, fileName, mayRead, tableFaults);
            return shelf;
        });
        PressOnDisk settled = Settle(reading, shelf, tableFaults);
        // what solids of the joints gave, where it was kept and is of the joints as they are now
        string path = JointsFile.PathOf(Path.Combine(folder, Path.GetFileName(fileName)));
        if (settled.Rig is not { } rig || mayRead?.Invoke(path) == false)
            return settled;
        if ((kept ?? new KeptJoints()).Read(path, out string unread) is { } joints)
        {
            Rig springing = JointBook.Springing(rig, joints);
            return settled with { Rig = springing.Springs is null && joints.Joints.Count > 0 ? Warned(JointsFile.OfOthers(path, JointBook.Missing(rig))) : springing, Joints = joints };
        }

        return unread.Length == 0 ? settled : settled with { Rig = Warned(unread) };

        // what was weakest may be among what is not counted
        Rig Warned(string of) => rig with { Cautions = [.. rig.Cautions, new Caution(CautionKind.Danger, of)] };
    }

    /// <summary>Settles a press that was read from a text.</summary>
    public static PressOnDisk Settle(PressReading reading, Shelf shelf, IReadOnlyList<PlacedFault>? others = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        List<PlacedFault> faults = [.. reading.Faults, .. others ?? []];
        if (faults.Count > 0 || reading.Press is null)
            return new PressOnDisk(reading, shelf, null, faults);
        try
        {
            return new PressOnDisk(reading, shelf, Resolver.Resolve(reading.Press, shelf), []);
        }
        catch (PressFaultsException unbuildable)
        {
            return new PressOnDisk(reading, shelf, null, reading.Placed(unbuildable.Faults));
        }
    }

    private static Shelf WithTable(Shelf shelf, string folder, string table, string press, Predicate<string>? mayRead, List<PlacedFault> faults)
    {
        try
        {
            string path = Path.GetFullPath(table, folder);
            if (mayRead?.Invoke(path) == false)
                throw new UnauthorizedAccessException();
            using TextReader? text = TableFile.Open(path);
            if (text is null)
            {
                faults.Add(new PlacedFault(press, 0, 0, 0, "stock", $"the stock table \"{table}\" is too long", "a table of less than 4 MB", null, ""));
                return shelf;
            }

            StockReading read = StockTables.Read(text, table, shelf);
            foreach (TableFault fault in read.Faults)
                faults.Add(new PlacedFault(fault.File, fault.Line, 0, 0, "", fault.Found, fault.Wanted, null, ""));
            return read.Shelf;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            faults.Add(new PlacedFault(press, 0, 0, 0, "stock", $"the stock table \"{table}\" cannot be opened", "the path of a CSV file beside the press file", null, ""));
            return shelf;
        }
    }
}
