using Ramwright.FaultFinding;
using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>All that proving knows of a press: its plan, what was read, and what follows. Each part is worked out when it is asked for.</summary>
/// <param name="check">The press.</param>
/// <param name="log">Its readings.</param>
/// <param name="units">Units of its texts.</param>
/// <param name="today">The day.</param>
public sealed class Proof(PressCheck check, ReadingLog log, UnitSystem units, DateOnly today)
{
    private readonly Lazy<TestPlan> _plan = new(() => TestPlan.Of(check, units));
    private readonly Lazy<TrueForce?> _force = new(() => TrueForce.Of(check, new ReadingBook(check, log.Readings, units)));
    private readonly Lazy<IReadOnlyList<PumpFit>> _pump = new(() => PumpFit.Of(check, new ReadingBook(check, log.Readings, units)));
    private readonly Lazy<IReadOnlyList<Stiffness>> _stiffness = new(() => Ramwright.Proving.Stiffness.Of(check, new ReadingBook(check, log.Readings, units)));

    /// <summary>The press.</summary>
    public PressCheck Check => check;
    /// <summary>Its readings, as the log has them.</summary>
    public ReadingLog Log => log;
    /// <summary>The day.</summary>
    public DateOnly Today => today;
    /// <summary>Units of its texts.</summary>
    public UnitSystem Units => units;
    /// <summary>Its readings with their instruments.</summary>
    public ReadingBook Book { get; } = new(check, log.Readings, units);
    /// <summary>The test plan.</summary>
    public TestPlan Plan => _plan.Value;
    /// <summary>The true force; null until a top pressure was read.</summary>
    public TrueForce? Force => _force.Value;
    /// <summary>The pump's curve.</summary>
    public IReadOnlyList<PumpFit> Pump => _pump.Value;
    /// <summary>Stiffness where dials stood.</summary>
    public IReadOnlyList<Stiffness> Stiffness => _stiffness.Value;
    /// <summary>What falls of shut-in pressure mean.</summary>
    public IReadOnlyList<LeakDown> Leaks => LeakDown.Of(check, Book);
    /// <summary>Readings beside what the model says of them.</summary>
    public IReadOnlyList<Compared> Compared => Ramwright.Proving.Compared.Of(check, Book);
    /// <summary>Dial readings at places that the frame does not have.</summary>
    public IReadOnlyList<Reading> Unplaced => Ramwright.Proving.Stiffness.Unplaced(check, Book);
    /// <summary>Why it is softer than reckoned; null where it is not, or nothing was read.</summary>
    public Diagnosis? Diagnosis => Stiffness.Any(s => s.IsSofter) ? Ramwright.Proving.Diagnosis.Of(check, Stiffness) : null;
    /// <summary>How it stands in service.</summary>
    public ServiceState Service => ServiceState.Of(check, Book, today);
    /// <summary>What the log's signs point to.</summary>
    /// <param name="tables">What is known of troubles.</param>
    /// <param name="more">Signs beside those of the log.</param>
    public FaultSearch Faults(FaultTables tables, IEnumerable<Seen>? more = null) =>
        FaultSearch.Of(check.Rig, tables, [.. Book.Of(ReadingKind.Sign).Where(r => r.Day == today).Select(r => new Seen(r.At, r.Word == "yes")), .. more ?? []]);

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
