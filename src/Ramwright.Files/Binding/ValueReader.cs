using System.Globalization;
using Ramwright.Files.Yaml;
using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Binding;

/// <summary>Reads the one-line values of a press file: quantities, names from stock, words, yes or no.</summary>
internal sealed class ValueReader(FaultList faults, Shelf? shelf, UnitSystem tape)
{
    private const int LongestValue = 200;

    private const string Bar = "flat 200x40";

    /// <summary>Reads a value; null, and a fault, when it cannot be.</summary>
    public object? Read(TextNode text, KeyShape key, string path)
    {
        if (text.Text.Trim().Length == 0)
        {
            faults.Add(text.Place, path, $"{key.Key} is empty", key.ExampleLine(tape));
            return null;
        }

        if (RunsOn(text, key, path))
            return null;
        if (text.Text.Length > LongestValue)
        {
            faults.Add(text.Place, path, $"this value is {text.Text.Length} characters long", $"at most {LongestValue}");
            return null;
        }

        return key.Form switch
        {
            KeyForm.Measure => Measure(text, key, path),
            KeyForm.StockName => StockName(text, key, path) ? text.Text.Trim() : null,
            KeyForm.Word => Word(text, key, path),
            KeyForm.Flag => Flag(text, key, path),
            _ => Plain(text, path),
        };
    }

    private bool RunsOn(TextNode text, KeyShape key, string path)
    {
        ReadOnlySpan<char> written = faults.Source.Text.AsSpan(text.Place.Offset, text.Place.Length);
        if (written.IndexOfAny("\r\n\u0085\u2028\u2029") < 0)
            return false;
        faults.Add(text.Place, path,
            text.IsPlain
                ? $"the value of {key.Key} runs on into the next line, because that line stands deeper"
                : $"the value of {key.Key} runs over several lines",
            "the value on one line; the next key straight below this one");
        return true;
    }

    private object? Measure(TextNode text, KeyShape key, string path)
    {
        MeasureAttribute measure = key.Measure!;
        if (!QuantityText.TryRead(text.Text, measure.Dimension, out Quantity quantity, out ReadingFault? fault, tape))
        {
            // an example of this very key, not of all that is measured in its unit
            const string begins = "start with the number: ";
            if (fault.Wanted.StartsWith(begins, StringComparison.Ordinal))
                fault = fault with { Wanted = $"{begins}{key.Says}, such as {key.ExampleIn(tape)}{(measure.Dimension == Dimension.Temperature ? HeatColour.InWords(text.Text) : "")}" };
            Add(text, path, fault);
            return null;
        }

        string shown = FaultWords.Clip(text.Text.Trim(), 40);
        if (!double.IsFinite(quantity.Si))
        {
            faults.Add(text.Place, path, $"{shown} is not a number", key.ExampleLine(tape));
            return null;
        }

        string about = $"{key.Says}, such as {key.ExampleIn(tape)}";
        bool tooSmall = double.IsNaN(measure.From) ? !(quantity.Si > measure.Above) : quantity.Si < measure.From;
        if (tooSmall)
        {
            string least = double.IsNaN(measure.From)
                ? $"more than {Bound(measure.Above, quantity.Unit)}"
                : $"at least {Bound(measure.From, quantity.Unit)}";
            faults.Add(text.Place, path, $"{shown}: {key.Key} must be {least}", about);
            return null;
        }

        if (quantity.Si > measure.UpTo)
        {
            faults.Add(text.Place, path, $"{shown}: {key.Key} can be {Bound(measure.UpTo, quantity.Unit)} at most", about);
            return null;
        }

        if (measure.Dimension == Dimension.Count && quantity.Si != Math.Floor(quantity.Si))
        {
            faults.Add(text.Place, path, $"{shown}: {key.Key} must be a whole number", about);
            return null;
        }

        return quantity.Si;
    }

    private bool StockName(TextNode text, KeyShape key, string path)
    {
        StockKind shelved = key.Stock!.What;
        string example = key.ExampleIn(tape);
        if (shelf is null)
            return true;
        string name = text.Text.Trim();
        (bool known, string what, IEnumerable<string> names) = shelved switch
        {
            StockKind.Steel => (shelf.TrySteel(name, out _), "steel", shelf.Steels.Select(s => s.Name)),
            StockKind.PropertyClass => (HasClass(name, shelf), "strength class", shelf.Classes.Select(c => c.Name)),
            StockKind.Thread => (shelf.TryThread(name, out _), "thread", shelf.Threads.Select(t => t.Name)),
            StockKind.Oil => (shelf.TryOil(name, out _), "oil", shelf.Oils.Select(o => o.Name)),
            StockKind.Hose => (HasHose(name, shelf), "type of hose", shelf.Hoses.Select(h => h.Type)),
            StockKind.Port => (shelf.TryPort(name, out _), "port thread", shelf.Ports.Select(p => p.Name)),
            _ => (true, "section", (IEnumerable<string>)[]),
        };
        if (shelved == StockKind.Section)
        {
            if (SectionText.TryRead(text.Text, shelf, out _, out ReadingFault? fault))
                return true;
            const string near = "nearest: ";
            if (fault.Wanted.StartsWith(near, StringComparison.Ordinal))
                Add(text, path, fault with { Wanted = $"a section from stock, such as {example}, or bar by its sizes, such as {(tape == UnitSystem.Imperial ? InchStock.Of(Bar) : Bar)}" }, fault.Wanted[near.Length..]);
            else
                Add(text, path, fault);
            return false;
        }

        if (!known && shelved is StockKind.Thread or StockKind.Port && ThreadSeries.Asked(name, shelved == StockKind.Port, shelf) is var (found, say))
        {
            faults.Add(text.Place, path, found, say);
            return false;
        }

        if (!known)
        {
            faults.Add(text.Place, path, $"no {what} is called {FaultWords.Quote(name)}",
                $"{(what[0] == 'o' ? "an" : "a")} {what} from stock, such as {example}", NearestWord.Among(name, names));
        }

        return known;
    }

    private object? Word(TextNode text, KeyShape key, string path)
    {
        var said = new List<string>();
        foreach (WordShape word in key.Words)
        {
            if (word.Word == text.Text)
                return word.Value;
            said.Add(word.Says.Length > 0 ? $"{word.Word} ({word.Says})" : word.Word);
        }

        faults.Add(text.Place, path, $"{key.Key} cannot be {FaultWords.Quote(text.Text)}", FaultWords.List(said),
            NearestWord.Among(text.Text, key.Words.Select(w => w.Word)));
        return null;
    }

    private object? Flag(TextNode text, KeyShape key, string path)
    {
        switch (text.Text)
        {
            case "yes" or "true":
                return true;
            case "no" or "false":
                return false;
            default:
                faults.Add(text.Place, path, $"{key.Key} is yes or no, not {FaultWords.Quote(text.Text)}",
                    $"yes or no: {key.Says}", NearestWord.Among(text.Text, ["yes", "no"]));
                return null;
        }
    }

    private string? Plain(TextNode text, string path)
    {
        foreach (char c in text.Text)
        {
            if (!char.IsControl(c))
                continue;
            faults.Add(text.Place, path, "this text has a control character in it", "the text without it");
            return null;
        }

        return text.Text;
    }

    // The trouble's own place inside the value, where characters and text agree.
    private void Add(TextNode text, string path, ReadingFault fault, string? nearest = null)
    {
        Place place = text.Place;
        int quote = text.IsQuoted ? 1 : 0;
        bool agrees = text.Place.Length == text.Text.Length + 2 * quote;
        int length = Math.Min(fault.Length, text.Text.Length - fault.Offset);
        if (agrees && fault.Offset >= 0 && fault.Offset <= text.Text.Length && length >= 0)
        {
            int from = quote + fault.Offset;
            place = new Place(place.Line, place.Column + from, place.Offset + from, Math.Max(1, length));
        }

        faults.Add(place, path, fault.Found, fault.Wanted, nearest);
    }

    private static string Bound(double si, Unit unit)
    {
        double value = unit.FromSi(si);
        double step = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 3);
        double rounded = Math.Round(value / step) * step;
        string number = rounded.ToString("0.######", CultureInfo.InvariantCulture);
        return unit.Symbol.Length == 0 ? number : $"{number} {unit.Symbol}";
    }

    private static bool HasClass(string name, Shelf shelf)
    {
        foreach (PropertyClass found in shelf.Classes)
        {
            if (Shelf.SameName(found.Name, name))
                return true;
        }

        return false;
    }

    private static bool HasHose(string name, Shelf shelf)
    {
        foreach (HoseGrade found in shelf.Hoses)
        {
            if (Shelf.SameName(found.Type, name))
                return true;
        }

        return false;
    }
}
