using Ramwright.Fabrication;
using Ramwright.Fabrication.Costs;
using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>All that the papers of a press are written from; each plan is drawn up once.</summary>
/// <param name="Of">The press and its parts.</param>
public sealed record Papers(MakeOf Of)
{
    /// <summary>The press, checked.</summary>
    public PressCheck Check => Of.Check;
    /// <summary>The press, settled.</summary>
    public Rig Rig => Of.Check.Rig;
    /// <summary>Its parts.</summary>
    public PartList Parts => Of.Parts;
    /// <summary>Units of the papers.</summary>
    public UnitSystem Units => Of.Units;
    /// <summary>Its welds.</summary>
    public WeldPlan Welds { get; } = WeldPlan.Of(Of.Check, Of.Units);
    /// <summary>Its bolts.</summary>
    public DrillingTable Drilling { get; } = DrillingTable.Of(Of.Check, Of.Units);
    /// <summary>What it costs.</summary>
    public CostSheet Costs => field ??= Costing.Of(Of.Check, Of.Parts, Welds, FromRack.Of(Of.Bars, Of.Nests, Of.Units));
    /// <summary>Its circuit.</summary>
    public Drawings.Circuit Circuit => field ??= Drawings.HydraulicSchematic.Of(Of.Check, Of.Units);

    /// <summary>A value in the reader's units.</summary>
    public string T(double si, Dimension dimension, int digits = 3) => Readout.Text(si, dimension, Of.Units, digits);

    /// <summary>A force as it is talked about.</summary>
    public string F(double newtons) => ForceText.Of(newtons, Of.Units);

    /// <summary>A tightening torque: newton metres whatever its size, for so wrenches are marked.</summary>
    public string Torque(double si) => Of.Units == UnitSystem.Metric ? $"{Readout.Number(si, 3)} N·m" : T(si, Dimension.Moment);

    /// <summary>Heat, kilowatt-hours: what gas and electricity are sold by; kilojoules and joules where it is little.</summary>
    public static string Heat(double joules) => $"{Readout.Number(joules / 3.6e6, 2)} kWh";

    /// <summary>What stands where neither file nor rule says anything.</summary>
    public const string Open = Drawings.CircuitComponent.Open;

    /// <summary>The press file's name, wherever it lies.</summary>
    public string FileName => Path.GetFileName(Of.Press.Reading.FileName);

    /// <summary>The day as it stands on the papers.</summary>
    public string DayText => Of.Day is { } day ? day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) : "date: ____________";

    /// <summary>What stands at the foot of every page.</summary>
    public string Stamp => $"{FileName} · SHA-256 {Of.Hash[..16]} · {DayText} · a calculation, not a certificate";
}
