using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Jobs that cannot be, and jobs that do not fit between the dies of this press.</summary>
internal static class JobRules
{
    /// <summary>Names for jobs by number and kind, as they are called where they have none of their own.</summary>
    public static string NameOf(Job job, int number) => job.Name is { Length: > 0 } said ? said : $"{ResolveJobs.KindOf(job)} {number + 1}";

    public static void Check(Press press, Shelf? shelf, List<Fault> faults)
    {
        if (press.Jobs is not { } jobs)
            return;
        var names = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < jobs.Count; i++)
        {
            if (jobs[i] is not { } job)
                continue;
            string path = $"jobs.{i}";
            if (job.Name is { } name && !names.TryAdd(name, i))
                faults.Add(new Fault($"{path}.name", $"two jobs are called {name}", "a name of its own for each", Against: $"jobs.{names[name]}.name"));
            switch (job)
            {
                case HotSqueeze hot:
                    HotSqueezeRules.Check(hot, path, press.Frame, shelf, faults);
                    break;
                case ClosedDie die:
                    ClosedDieRules.Check(die, path, press.Frame, faults);
                    break;
                case VBend bend:
                    BendingRules.Check(bend, path, press.Frame, faults);
                    break;
                case BarBend bend:
                    BendingRules.Check(bend, path, press.Frame, shelf, faults);
                    break;
                case Straighten straighten:
                    BendingRules.Check(straighten, path, press.Frame, shelf, faults);
                    break;
                case Punch punch:
                    CuttingRules.Check(punch, path, press.Frame, faults);
                    break;
                case Shear shear:
                    CuttingRules.Check(shear, path, press.Frame, faults);
                    break;
                case PressFit fit:
                    FitRules.Check(fit, path, press.Frame, faults);
                    break;
                case Pull pull:
                    FitRules.Check(pull, path, press.Cylinder, faults);
                    break;
                case Crush crush:
                    CrushingRules.Check(crush, path, press.Frame, shelf, faults);
                    break;
                case CrushTimber timber:
                    CrushingRules.Check(timber, path, press.Frame, faults);
                    break;
                case SplitTimber log:
                    CrushingRules.Check(log, path, press.Frame, faults);
                    break;
                case CrushConcrete concrete:
                    CrushingRules.Check(concrete, path, press.Frame, faults);
                    break;
            }
        }
    }

    /// <summary>A piece that does not go into the opening.</summary>
    public static void Fits(double height, string what, string path, Job job, PressFrame? frame, List<Fault> faults)
    {
        if (frame?.Daylight is not { } daylight)
            return;
        double tools = job.Tools ?? 0;
        if (height + tools <= daylight)
            return;
        string with = tools > 0 ? " with its {2} of tools" : "";
        faults.Add(new Fault(path, new Remark($"{what} stands {{0}} high{with} and does not go into the opening of {{1}}", Remark.Of(height, Dimension.Length), Remark.Of(daylight, Dimension.Length), Remark.Of(tools, Dimension.Length)),
            "a piece that goes in, or the press's own daylight", Against: "frame.daylight"));
    }

    /// <summary>A die or support wider than the bed.</summary>
    public static void OnTheBed(double? width, string what, string path, PressFrame? frame, List<Fault> faults)
    {
        (double? room, string? key, string where) = frame switch
        {
            ClosedFrame closed => (closed.Width, "frame.width", "between the uprights"),
            TieRodFrame { BedPlate: { } plate } => (plate.Width is { } w && plate.Length is { } l ? Math.Max(w, l) : null, "frame.bed-plate", "on the bed plate"),
            TieRodFrame rods => (rods.RodsAcross, "frame.rods-across", "between the rods"),
            OpenFrontFrame open => (2 * open.Throat, "frame.throat", "in the throat, set on the ram's line"),
            _ => ((double?)null, (string?)null, ""),
        };
        if (width > room)
        {
            faults.Add(new Fault(path, new Remark($"{what} is {{0}} wide; {where} there is room for {{1}}", Remark.Of(width.Value, Dimension.Length), Remark.Of(room.Value, Dimension.Length)),
                "one no wider than the bed", Against: key));
        }
    }

    /// <summary>The bar that a text calls; null, and perhaps a fault, where it is none.</summary>
    public static Shape? Bar(string? said, string path, Shelf? shelf, List<Fault> faults)
    {
        if (said is null || shelf is null || !SectionText.TryRead(said, shelf, out Shape? shape, out _))
            return null;
        if (shape is Flat or Round)
            return shape;
        faults.Add(new Fault(path, $"{shape.Name} is no bar", "round 30, square 30 or flat 50x10"));
        return null;
    }
}
