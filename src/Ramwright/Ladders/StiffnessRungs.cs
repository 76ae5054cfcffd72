using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>The ram force at which the dies have opened out of parallel by as much as is allowed.</summary>
internal static class StiffnessRungs
{
    private static readonly Citation Source = Citation.Mechanics("beam frame solved for one newton at the ram; the answer is linear");

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        (int at, double opening) = response.WorstOpening();
        // a die that turns less than a micrometre per metre at the wanted force does not open
        if (opening * rig.Wanted < 1e-6)
            return;
        string name = response.Solutions[at].Case.Name;
        double force = OpeningLimit(rig.Loading.AllowedOpening, opening);
        rungs.Add(new Rung
        {
            Id = "die-opening",
            Part = "dies",
            Mode = $"open out of parallel, {name}",
            Brief = "open out of parallel",
            Load = name == "centred" ? "" : name,
            Saying = $"open out of parallel by the allowed amount ({name})",
            Plural = true,
            Group = RungGroup.Stiffness,
            GivesAt = force,
            SafeTo = force,
            FactorFrom = "none: it spoils work, not the press",
            Source = Source,
            Work = w =>
            {
                w.Note($"The worst load case: {name}.");
                w.Take("θ_1", "turn of the dies against each other for one newton", opening, Dimension.Number, Source);
                OpeningLimit(rig.Loading.AllowedOpening, opening, w);
            },
        });
    }

    private static double OpeningLimit(double θ_a, double θ_1, Working? w = null)
    {
        double F = θ_a / θ_1;
        w?.Step("F", "ram force at which the dies open by the allowed amount", "θ_a / θ_1", F, Dimension.Force, Source,
            ("θ_a", θ_a, Dimension.Slope), ("θ_1", θ_1, Dimension.Number));
        return F;
    }
}
