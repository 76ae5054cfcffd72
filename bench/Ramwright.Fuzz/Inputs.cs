using System.Globalization;
using System.Text;
using Ramwright.Bench;
using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Tests;

namespace Ramwright.Fuzz;

/// <summary>Makes inputs: examples and starters changed by a careless or hostile hand, whole presses made up, loose lines.</summary>
internal sealed class Inputs
{
    private static readonly string[] Words =
    [
        "0", "-1", "1e308", "-1e308", "1e-300", "NaN", "Infinity", "0 mm", "1 mm", "1e9 mm", "0.0001 mm", "20 MN", "1 N", "300 MPa", "1 ton", "25 t",
        "kind: closed", "kind: open-front", "kind: bolt", "kind: pin", "&a", "*a", "!!str", "|", ">", "{", "}", "[", "]", ",", ": ", "- ", "#", "'", "\"", "\t",
        "\u00A0", "\uFEFF", "\u2028", "\0", "\r", "---", "...", "? ", "<<: *a", "2 x flat 3000x3000", "flat 0.5x0.5", "round 3000", "HEB 160", "2 x 2 x UPN 200",
        "CHS 88.9x44.45", "SHS 100x100x50", "unknown", "M1000", "M36x35", "½", "1-1/2 in", "10,000 psi", "10.000,5 bar", "1/0 in", "99999999999999999999999 kN",
    ];

    private readonly string[] _texts;
    private readonly string[] _lines;

    public Inputs()
    {
        _texts =
        [
            .. Directory.GetFiles(Repository.Find("examples"), "*.press.yaml").Order().Select(File.ReadAllText),
            .. Starter.Kinds.Select(k => Starter.Text(k)),
            .. Starter.Kinds.Select(k => Uncommented(Starter.Text(k))),
        ];
        _lines = [.. _texts.SelectMany(t => t.Split('\n')).Where(l => l.Trim().Length > 0 && !l.TrimStart().StartsWith('#')).Distinct()];
    }

    /// <summary>The input of a number; the same number gives the same input.</summary>
    public (string Kind, byte[] Bytes) Of(int number)
    {
        var random = new Random(number);
        switch (random.Next(10))
        {
            case < 5:
                return ("changed example", Changed(_texts[random.Next(_texts.Length)], random, 1 + random.Next(6)));
            case < 8:
                Press press = new MadeUpPress((uint)number, StockTables.Built).ThatCouldBe();
                string text = MadeUpPress.Text(press);
                return random.Next(3) == 0 ? ("made-up press, changed", Changed(text, random, 1 + random.Next(3))) : ("made-up press", Encoding.UTF8.GetBytes(text));
            case 8:
                var lines = new StringBuilder();
                for (int i = random.Next(1, 60); i > 0; i--)
                    lines.Append(' ', 2 * random.Next(3)).Append(_lines[random.Next(_lines.Length)].Trim()).Append('\n');
                return ("loose lines", Encoding.UTF8.GetBytes(lines.ToString()));
            default:
                byte[] bytes = new byte[random.Next(400)];
                random.NextBytes(bytes);
                return ("any bytes", bytes);
        }
    }

    private byte[] Changed(string text, Random random, int times)
    {
        var s = new StringBuilder(text);
        for (int i = 0; i < times && s.Length > 0; i++)
        {
            int at = random.Next(s.Length), some = Math.Min(random.Next(1, 60), s.Length - at);
            switch (random.Next(8))
            {
                case 0:
                    s.Remove(at, some);
                    break;
                case 1:
                    s.Insert(at, s.ToString(at, some));
                    break;
                case 2:
                    s.Insert(at, Words[random.Next(Words.Length)]);
                    break;
                case 3:
                    s.Insert(at, (char)random.Next(0x20, 0x2100));
                    break;
                case 4:
                    s.Insert(at, "\n" + _lines[random.Next(_lines.Length)] + "\n");
                    break;
                case 5:
                    Digits(s, at, random);
                    break;
                default:
                    Value(s, at, random);
                    break;
            }
        }

        byte[] bytes = Encoding.UTF8.GetBytes(s.ToString());
        if (random.Next(20) == 0 && bytes.Length > 0)
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        return bytes;
    }

    /// <summary>Another number in place of the next one.</summary>
    private static void Digits(StringBuilder s, int at, Random random)
    {
        while (at < s.Length && !char.IsAsciiDigit(s[at]))
            at++;
        int end = at;
        while (end < s.Length && (char.IsAsciiDigit(s[end]) || s[end] == '.'))
            end++;
        double number = Math.Pow(10, random.NextDouble() * 8 - 3);
        s.Remove(at, end - at).Insert(at, number.ToString("0.####", CultureInfo.InvariantCulture));
    }

    /// <summary>Another word in place of the value on this line.</summary>
    private static void Value(StringBuilder s, int at, Random random)
    {
        while (at < s.Length && s[at] != ':')
            at++;
        int end = at;
        while (end < s.Length && s[end] is not ('\n' or ',' or '}'))
            end++;
        if (end > at)
            s.Remove(at, end - at).Insert(at, ": " + Words[random.Next(Words.Length)]);
    }

    private static string Uncommented(string text) =>
        string.Join('\n', text.Split('\n').Select(l => l.TrimStart().StartsWith('#') && l.Contains(':', StringComparison.Ordinal) ? l.Replace("#", "", StringComparison.Ordinal) : l));
}
