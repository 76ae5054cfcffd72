using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Where a law of flow stress was measured. Outside it the law is not known to hold.</summary>
/// <param name="Coldest">Lowest temperature, °C.</param>
/// <param name="Hottest">Highest temperature, °C.</param>
/// <param name="Slowest">Lowest strain rate, 1/s.</param>
/// <param name="Fastest">Highest strain rate, 1/s.</param>
/// <param name="MostStrain">Greatest true strain.</param>
public sealed record FlowRange(double Coldest, double Hottest, double Slowest, double Fastest, double MostStrain)
{
    /// <summary>Whether all three lie inside.</summary>
    public bool Contains(double strain, double rate, double temperature) =>
        strain >= 0 && strain <= MostStrain && rate >= Slowest && rate <= Fastest && temperature >= Coldest && temperature <= Hottest;

    /// <summary>What lies outside, in words, as clauses: <c>a strain rate of 0.02 /s is slower than the 0.1 /s the formula begins at</c>.</summary>
    public IReadOnlyList<Remark> Outside(double strain, double rate, double temperature)
    {
        var outside = new List<Remark>();
        void Say(string words, double found, double end, Dimension dimension) =>
            outside.Add(new Remark(words, Remark.Of(found, dimension), Remark.Of(end, dimension)));
        if (temperature < Coldest)
            Say("{0} is colder than the {1} the formula begins at", temperature, Coldest, Dimension.Temperature);
        else if (temperature > Hottest)
            Say("{0} is hotter than the {1} the formula ends at", temperature, Hottest, Dimension.Temperature);
        if (rate < Slowest)
            Say("a strain rate of {0} /s is slower than the {1} /s the formula begins at", rate, Slowest, Dimension.Number);
        else if (rate > Fastest)
            Say("a strain rate of {0} /s is faster than the {1} /s the formula ends at", rate, Fastest, Dimension.Number);
        if (strain > MostStrain)
            Say("a strain of {0} is more than the {1} the formula ends at", strain, MostStrain, Dimension.Number);
        return outside;
    }
}
