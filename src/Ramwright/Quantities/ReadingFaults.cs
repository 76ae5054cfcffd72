using System.Globalization;

namespace Ramwright.Quantities;

/// <summary>The words for everything that can be wrong with a written quantity, one factory for each.</summary>
internal static class ReadingFaults
{
    public static ReadingFault Empty(string text, Dimension wanted) =>
        new("nothing is written here", Say(wanted), 0, text.Length);

    public static ReadingFault NoNumber(string text, int at, Dimension wanted)
    {
        if (at >= text.Length)
            return new("the number is missing", Say(wanted), 0, text.Length);
        int end = EndOfWord(text, at);
        string word = text[at..end];
        bool unbounded = word.Equals("nan", StringComparison.OrdinalIgnoreCase)
            || word.StartsWith("inf", StringComparison.OrdinalIgnoreCase) || word[0] == '∞';
        return new(unbounded ? $"{Quoted(word)} is not a finite number" : $"{Quoted(word)} stands where the number should be",
            $"start with the number: {Say(wanted)}", at, end - at);
    }

    public static ReadingFault TwoPoints(string text, int start, int end)
    {
        string number = text[start..end];
        string[] groups = number.Split('.');
        bool thousands = groups[0].Length is > 0 and <= 3 && groups[0][0] != '0' && groups.Skip(1).All(g => g.Length == 3);
        return new($"{number} has more than one point",
            thousands ? $"thousands without points: {number.Replace(".", "")}{text[end..].TrimEnd()}" : "one point at most, such as 1.5", start, end - start);
    }

    public static ReadingFault DecimalComma(string text, int start, int end)
    {
        string number = text[start..end];
        int comma = number.IndexOf(','), point = number.IndexOf('.');
        bool single = comma >= 0 && comma == number.LastIndexOf(',');
        string before = text[..start].TrimStart(), rest = text[end..].TrimEnd();
        if (single && (point < 0 || point < comma)) // 1,5 and 1.500,5
        {
            string meant = number.Replace(".", "").Replace(',', '.');
            return new($"{number} has a comma where the decimal point belongs", $"{before}{(meant[0] == '.' ? "0" : "")}{meant}{rest}", start, end - start);
        }

        string without = new([.. number.Where(c => char.IsAsciiDigit(c) || c == '.' || char.IsLetter(c))]);
        return new($"the commas in {number} do not part it into groups of three",
            $"no commas, such as {before}{without}{rest}, if that is what is meant", start, end - start);
    }

    public static ReadingFault TooLarge(string text, int start, int end) =>
        new($"{Short(text[start..end])} is too large to be meant", "a number of everyday size", start, end - start);

    public static ReadingFault TooSmall(string text, int start, int end) =>
        new($"{Short(text[start..end])} is too small to be meant", "0, or a number of everyday size", start, end - start);

    public static ReadingFault FractionOfDecimals(string text, int start, int end) =>
        new($"{text[start..end]} mixes a fraction with decimals", "one or the other: 1.25, 5/4 or 1-1/4", start, end - start);

    public static ReadingFault DividedByZero(string text, int start, int end) =>
        new($"{text[start..end]} divides by zero", "a fraction such as 3/4", start, end - start);

    public static ReadingFault TopHeavy(string text, int start, int end) =>
        new($"{text[start..end]} after a whole number is not less than one", "a fraction below one, such as 1-1/4", start, end - start);

    public static ReadingFault TwoNumbers(string text, int start, int end, int second, Dimension wanted)
    {
        string first = text[start..end].TrimEnd();
        string rest = text[second..].TrimEnd();
        int digits = rest.TakeWhile(char.IsAsciiDigit).Count();
        bool spaced = string.IsNullOrWhiteSpace(text[end..second]) && first.Length is > 0 and <= 3 && first.All(char.IsAsciiDigit) && first[0] != '0' && digits == 3;
        return new($"there are two numbers, {first} and {rest}",
            spaced ? $"{first},{rest} if it is one number; else only one of them" : $"only one number: {Say(wanted)}",
            second, text.TrimEnd().Length - second);
    }

    public static ReadingFault MissingUnit(string text, int start, int end, Dimension wanted)
    {
        string number = text[start..end];
        return new($"{number} has no unit", $"{DimensionWords.Noun(wanted)} with its unit, such as {With(number, wanted)}", start, end - start);
    }

    public static ReadingFault MissingInchMark(string text, int start, int end) =>
        new($"{text[start..end].Trim()} after the feet has no unit", "inches marked as such: 5' 3-1/2\" or 5 ft 3 in", start, end - start);

    public static ReadingFault BrokenFeet(string text, int start, int end) =>
        new($"{text[start..end].Trim()} is not a whole number of feet, and inches follow", "whole feet before inches: 5' 3-1/2\"", start, end - start);

    public static ReadingFault TooManyInches(string text, int start, int end) =>
        new($"{text[start..end].Trim()} inches after the feet make another foot", "less than 12 inches after feet: 5' 3-1/2\"", start, end - start);

    public static ReadingFault NotWhole(string text, int start, int end) =>
        new($"{text[start..end].Trim()} is not a whole number", "a whole number, such as 4", start, end - start);

    public static ReadingFault NotAShare(string text, int start, int end)
    {
        string number = text[start..end].Trim();
        return new($"{number} without % is not a share of one", $"{number} % or a number from 0 to 1, such as 0.03", start, end - start);
    }

    public static ReadingFault Stray(string text, int start, Dimension wanted)
    {
        string stray = text[start..].TrimEnd();
        return new($"{Quoted(stray)} is left over", $"only {Say(wanted)}", start, stray.Length);
    }

    public static ReadingFault WhichTon(string number, Dimension wanted, int start, int length, string written)
    {
        string found = written == "T" ? "capital T is written for three different tons" : $"{Quoted(written)} is three different {(wanted == Dimension.Mass ? "masses" : "forces")}";
        return new(found, wanted == Dimension.Mass
            ? $"say which: {number} t (tonne, 1000 kg each), {number} US ton (907.2 kg each) or {number} UK ton (1016 kg each)"
            : $"say which: {number} t (tonne-force, 9.807 kN each), {number} US ton (8.896 kN each) or {number} UK ton (9.964 kN each)", start, length);
    }

    public static ReadingFault WhoseUnit(string number, int start, int length, string written, string us, string uk, string worth) =>
        new($"{Quoted(written)} does not say whether it is the US or the UK one",
            $"say which: {number} {us} or {number} {uk} ({worth})", start, length);

    public static ReadingFault ReferenceAir(string number, int start, int length, string written) =>
        new($"{Quoted(written)} counts air at a reference state, not as it is drawn in at the intake",
            $"the free air delivered, such as {number} cfm or 250 L/min", start, length);

    public static ReadingFault MassForForce(string number, int start, int length, string written) =>
        new($"{Quoted(written)} is a mass, not a force", $"{number} kgf for its weight, or newtons", start, length);

    public static ReadingFault EitherCase(string number, int start, int length, string written, Unit one, Unit other) =>
        new($"{Quoted(written)} could be {one.Symbol} or {other.Symbol}", $"mind the case: {number} {one.Symbol} or {number} {other.Symbol}", start, length);

    public static ReadingFault OtherPrefix(string number, int start, int length, string written, Unit unit) =>
        new($"{Quoted(written)} is not {unit.Symbol}: small m is a thousandth, capital M a million",
            $"mind the case: {number} {unit.Symbol}", start, length);

    public static ReadingFault OtherDimension(
        Dimension wanted, int start, int length, string written, Dimension is1, Dimension? is2)
    {
        string nouns = DimensionWords.Noun(is1) + (is2 is { } d ? $" or {DimensionWords.Noun(d)}" : "");
        return new($"{Quoted(written)} is {nouns}", Say(wanted), start, length);
    }

    public static ReadingFault UnknownUnit(string number, Dimension wanted, int start, int length, string written, string? nearest) =>
        new($"no unit is called {Quoted(written)}",
            nearest is null ? Say(wanted) : $"the nearest is {nearest}: {number}{Gap(nearest)}{nearest}", start, length);

    /// <summary><c>10k psi</c>: k for a thousand.</summary>
    public static ReadingFault Thousands(string text, int start, int numberEnd, int unitStart, int unitEnd, Dimension wanted)
    {
        string unit = text[(unitStart + 1)..unitEnd].Trim(), number = text[start..numberEnd].Replace(",", "");
        string whole = double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? Readout.Number(value * 1000, 17) : number + ",000";
        return new($"{text[start..numberEnd]}k: k is not read as a thousand",
            unit.Length > 0 ? $"the number written out: {whole} {unit}" : $"the number written out, with its unit: {DimensionWords.Noun(wanted)}, such as {DimensionWords.Example(wanted)}",
            start, unitEnd - start);
    }

    /// <summary>A dimension with an example: <c>a length, such as 600 mm</c>.</summary>
    private static string Say(Dimension wanted) => $"{DimensionWords.Noun(wanted)}, such as {DimensionWords.Example(wanted)}";

    /// <summary>The same fault with its example as the person's own tape would show it.</summary>
    public static ReadingFault On(UnitSystem tape, Dimension wanted, ReadingFault fault)
    {
        string example = DimensionWords.Example(wanted);
        return fault with { Wanted = fault.Wanted.Replace($"such as {example}", $"such as {ExampleSize.In(example, wanted, tape)}", StringComparison.Ordinal) };
    }

    /// <summary>The number as it stands with the usual unit, metric and imperial.</summary>
    private static string With(string number, Dimension wanted)
    {
        bool fraction = number.Any(c => c is '/' or '⁄' or '∕' or '½' or '¼' or '¾' or (>= '⅓' and <= '⅞'));
        string metric = Units.Of(wanted)[0].Symbol, imperial = Readout.UnitFor(wanted, UnitSystem.Imperial).Symbol;
        string Whole(string symbol) => number + Gap(symbol) + symbol;
        // nobody knows here whose tape it was read off
        return wanted == Dimension.Length && fraction ? Whole("in") : metric == imperial ? Whole(metric) : $"{Whole(metric)} or {Whole(imperial)}";
    }

    private static string Gap(string symbol) => symbol == "°" ? "" : " ";

    private static string Quoted(string word) => word.Contains('"') ? $"“{word}”" : $"\"{Short(word)}\"";

    private static string Short(string word) => word.Length <= 40 ? word : string.Create(CultureInfo.InvariantCulture, $"{word.AsSpan(0, 37)}...");

    private static int EndOfWord(string text, int at)
    {
        int end = at;
        while (end < text.Length && !char.IsWhiteSpace(text[end]))
            end++;
        return end;
    }
}
