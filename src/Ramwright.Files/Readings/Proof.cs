using Ramwright.FaultFinding;
using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>All that proving knows of a press: its plan, what was read, and what follows. Each part is worked out when it is asked for.</summary>
public sealed class Proof
{
    private readonly Lazy<TestPlan> _plan;
    private readonly Lazy<TrueForce?> _force;
    private readonly Lazy<IReadOnlyList<PumpFit>> _pump;
    private readonly Lazy<IReadOnlyList<Stiffness>> _stiffness;

    /// <summary>Takes up press and log; what cannot be so on this press is a fault from here on.</summary>
    /// <param name="check">The press.</param>
    /// <param name="log">Its readings.</param>
    /// <param name="units">Units of its texts.</param>
    /// <param name="today">The day.</param>
    public Proof(PressCheck check, ReadingLog log, UnitSystem units, DateOnly today)
    {
        (Check, Units, Today) = (check, units, today);
        (Log, Impossible) = ReadingGate.Sift(check, log, units);
        Book = new ReadingBook(check, Log.Readings, units);
        _plan = new(() => TestPlan.Of(check, units));
        _force = new(() => TrueForce.Of(check, Book));
        _pump = new(() => PumpFit.Of(check, Book));
        _stiffness = new(() => Ramwright.Proving.Stiffness.Of(check, Book));
    }

    /// <summary>The press.</summary>
    public PressCheck Check { get; }
    /// <summary>Its readings, as the log has them, what cannot be so among its faults.</summary>
    public ReadingLog Log { get; }
    /// <summary>Pressures that cannot have been read on this press; not counted.</summary>
    public IReadOnlyList<PlacedFault> Impossible { get; }
    /// <summary>The day.</summary>
    public DateOnly Today { get; }
    /// <summary>Units of its texts.</summary>
    public UnitSystem Units { get; }
    /// <summary>Its readings with their instruments.</summary>
    public ReadingBook Book { get; }
    /// <summary>The test plan.</summary>
    public TestPlan Plan => _plan.Value;
    /// <summary>The true force; null until a top pressure was read, and where the readings tell none.</summary>
    public TrueForce? Force => Untold is null ? _force.Value : null;
    /// <summary>Why what was read tells no true force; null where it does, or nothing was read.</summary>
    public string? Untold => _force.Value?.Untold(Units);
    /// <summary>The pump's curve.</summary>
    public IReadOnlyList<PumpFit> Pump => _pump.Value;
    /// <summary>Stiffness where dials stood.</summary>
    public IReadOnlyList<Stiffness> Stiffness => _stiffness.Value;
    /// <summary>What falls of shut-in pressure mean.</summary>
    public IReadOnlyList<LeakDown> Leaks => LeakDown.Of(Check, Book);
    /// <summary>Readings beside what the model says of them.</summary>
    public IReadOnlyList<Compared> Compared => Ramwright.Proving.Compared.Of(Check, Book);
    /// <summary>Why it is softer than reckoned; null where it is not, or nothing was read.</summary>
    public Diagnosis? Diagnosis => Stiffness.Any(s => s.IsSofter) ? Ramwright.Proving.Diagnosis.Of(Check, Stiffness) : null;
    /// <summary>How it stands in service.</summary>
    public ServiceState Service => ServiceState.Of(Check, Book, Today);
    /// <summary>What the log's signs point to.</summary>
    /// <param name="tables">What is known of troubles.</param>
    /// <param name="more">Signs beside those of the log.</param>
    public FaultSearch Faults(FaultTables tables, IEnumerable<Seen>? more = null) =>
        FaultSearch.Of(Check.Rig, tables, [.. Book.Of(ReadingKind.Sign).Where(r => r.Day == Today).Select(r => new Seen(r.At, r.Word == "yes")), .. more ?? []]);

    /// <summary>Steps of the plan that the log closes, with the word they were closed by.</summary>
    public IReadOnlyDictionary<int, string> Closed
    {
        get
        {
            var closed = new Dictionary<int, string>();
            foreach (Reading done in Book.Of(ReadingKind.Done))
            {
                if (done.Step is { } step)
                    closed[step] = done.Word;
            }

            return closed;
        }
    }

    /// <summary>Things that were seen and mean stop: a set, a step stopped, something looked at that was not in order, a dial beyond its stop reading.</summary>
    public IReadOnlyList<string> Stops => [.. StopSigns.Of(this)];
}
