using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Steel and heat that hot work cannot be done with.</summary>
internal static class SmithRules
{
    /// <summary>Carbon that the formula of flow stress was measured for, share of one.</summary>
    private const double LeastCarbon = 0.0007, MostCarbon = 0.012;

    // beyond this the surface melts or burns, whatever the steel; as tabulated for 0.1 % carbon
    private const double Burns = 1315;

    /// <summary>The steel of hot work; null, and a fault, where nothing is known of it.</summary>
    public static ForgingSteel? Steel(string? said, double? saidCarbon, string path, List<Fault> faults)
    {
        if (saidCarbon is { } carbon && !(carbon >= LeastCarbon && carbon <= MostCarbon))
        {
            faults.Add(new Fault($"{path}.carbon", new Remark("{0} of carbon is outside what the flow stress of hot steel is known for here", Remark.Of(carbon, Dimension.Ratio)),
                new Remark("{0} to {1}", Remark.Of(LeastCarbon, Dimension.Ratio), Remark.Of(MostCarbon, Dimension.Ratio))));
            return null;
        }

        if (said is not { } name)
            return ForgingSteel.Plain(saidCarbon ?? 0.002);
        if (ForgingSteel.Find(name) is { } steel)
            return saidCarbon is { } own ? steel with { Carbon = own } : steel;
        IEnumerable<string> all = ForgingSteel.All.SelectMany(s => s.Also.Prepend(s.Name));
        faults.Add(new Fault($"{path}.steel", $"what it takes to squeeze \"{name}\" hot is not known here",
            "one of " + string.Join(", ", ForgingSteel.All.Select(s => s.Name)) + "; plain steel by its carbon: 0.45 %", NearestWord.Among(name, all)));
        return null;
    }

    /// <summary>A heat the steel cannot be worked at.</summary>
    public static void Heat(double? said, ForgingSteel? of, string path, List<Fault> faults)
    {
        if (said is not { } heat || of is not { } steel)
            return;
        Given at = Remark.Of(heat, Dimension.Temperature);
        var range = new Remark($"{{0}} to {{1}} for {steel.Name}", Remark.Of(steel.Coldest, Dimension.Temperature), Remark.Of(steel.Hottest, Dimension.Temperature));
        if (heat < steel.Coldest)
            faults.Add(new Fault($"{path}.heat", new Remark($"{{0}} is colder than {steel.Name} may be forged at: it tears, and needs far more force", at), range));
        else if (heat > Burns)
            faults.Add(new Fault($"{path}.heat", new Remark("{0} burns steel", at), range));
    }

    /// <summary>The steel as settled.</summary>
    public static ForgingSteel Settle(string? said, double? saidCarbon, string path, Assumptions assume)
    {
        if (said is { } name && ForgingSteel.Find(name) is { } steel)
            return saidCarbon is { } own ? steel with { Carbon = own } : steel;
        if (saidCarbon is { } carbon)
            return ForgingSteel.Plain(carbon);
        assume.Note($"{path}.steel", "mild", "nothing was said of it");
        return ForgingSteel.Find("mild")!;
    }
}
