using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Gathers the rows of one table and puts them onto a shelf.</summary>
internal sealed class ShelfFiller
{
    private readonly List<Shape> _sections = [];
    private readonly List<Steel> _steels = [];
    private readonly List<PropertyClass> _classes = [];
    private readonly List<ScrewThread> _threads = [];
    private readonly List<HoseGrade> _hoses = [];
    private readonly List<OilGrade> _oils = [];
    private readonly List<PortThread> _ports = [];
    private readonly Dictionary<string, int> _lines = [];       // where each name was met
    private readonly List<BandedSteel> _bands = [];
    private readonly HashSet<string> _spoiled = [];             // steels with a row that could not be used

    private sealed record BandedSteel(TableRow Row, List<StrengthBand> Bands, double? BetaW);

    public void Add(TableRow row, Shape section)
    {
        Once(row, section.Name);
        _sections.Add(section);
    }

    public void Add(TableRow row, ScrewThread thread)
    {
        Once(row, thread.Name);
        _threads.Add(thread);
    }

    public void Add(TableRow row, OilGrade oil)
    {
        Once(row, oil.Name);
        _oils.Add(oil);
    }

    public void Add(PropertyClass row) => _classes.Add(row);

    public void Add(HoseGrade hose) => _hoses.Add(hose);

    /// <summary>A thread, under each of its names.</summary>
    public void Add(TableRow row, PortThread port)
    {
        foreach (string name in row.Names())
        {
            Once(row, name);
            _ports.Add(port with { Name = name });
        }
    }

    /// <summary>Leaves a steel out whose row could not be used: without one of its bands the others would say too much.</summary>
    public void Spoil(string steel) => _spoiled.Add(Shelf.Key(steel));

    /// <summary>A row of a steel: the first of its name, or a thicker band of the one above.</summary>
    public void AddBand(TableRow row, StrengthBand band, double? betaW)
    {
        string name = row.Needed("name");
        if (_bands.Count > 0 && Shelf.SameName(_bands[^1].Row.Text("name"), name))
        {
            List<StrengthBand> bands = _bands[^1].Bands;
            if (band.UpTo <= bands[^1].UpTo)
                throw new BadRowException($"{name} is given twice up to this thickness", "bands from thin to thick, or another name");
            bands.Add(band);
            return;
        }

        foreach (string each in row.Names())
            Once(row, each);
        row.Source();       // a fault in it belongs to this row
        _bands.Add(new BandedSteel(row, [band], betaW));
    }

    /// <summary>The shelf with these rows in front, in the stead of old ones of the same name.</summary>
    public Shelf Onto(Shelf shelf)
    {
        foreach (BandedSteel steel in _bands)
        {
            TableRow row = steel.Row;
            if (_spoiled.Contains(Shelf.Key(row.Text("name"))))
                continue;

            foreach (string name in row.Names())
            {
                _steels.Add(new Steel
                {
                    Name = name,
                    Bands = steel.Bands,
                    BetaW = steel.BetaW,
                    Caution = row.Text("caution"),
                    Refused = row.Text("refused"),
                    Source = row.Source(),
                });
            }
        }

        return new Shelf
        {
            Steels = Merged(_steels, shelf.Steels, s => s.Name),
            Sections = Merged(_sections, shelf.Sections, s => s.Name),
            Classes = Merged(_classes, shelf.Classes, c => $"{c.Name} {c.Above} {c.UpTo}"),
            Threads = Merged(_threads, shelf.Threads, t => t.Name),
            Hoses = Merged(_hoses, shelf.Hoses, h => $"{h.Type} {h.Bore}"),
            Oils = Merged(_oils, shelf.Oils, o => o.Name),
            Ports = Merged(_ports, shelf.Ports, p => p.Name),
        };
    }

    private void Once(TableRow row, string name)
    {
        string key = Shelf.Key(name);
        if (!_lines.TryAdd(key, row.Line))
            throw new BadRowException($"{name} stands in the table twice, first in line {_lines[key]}", "each name once");
    }

    private static IReadOnlyList<T> Merged<T>(List<T> added, IReadOnlyList<T> old, Func<T, string> name)
    {
        if (added.Count == 0)
            return old;
        if (old.Count == 0)
            return added;
        var names = added.Select(a => Shelf.Key(name(a))).ToHashSet();
        return [.. added, .. old.Where(o => !names.Contains(Shelf.Key(name(o))))];
    }
}
