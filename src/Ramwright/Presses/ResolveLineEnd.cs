using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles an end of a line, and says what must not be screwed together.</summary>
internal static class ResolveLineEnd
{
    public static RigLineEnd? Of(LineEnd? said, string path, string what, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        PortThread thread = Named(said.Thread, path + ".thread", shelf), port = Named(said.Port, path + ".port", shelf);
        var end = new RigLineEnd(thread, port, (PortSeal?)said.Seal);
        PortMating mating = end.Mating;
        switch (mating.Match)
        {
            case PortMatch.Cannot:
                assume.Fault(path + ".port", $"{thread.InWords} cannot be screwed into {port.InWords}: {mating.Why}",
                    "the thread that is really there, measured with a thread gauge; an adaptor counts as the port");
                break;
            case PortMatch.MustNot:
                assume.Caution($"At the {what}, {thread.InWords} must not be screwed into {port.InWords}: {mating.Why}. Fit an adaptor made for the pair.", CautionKind.Danger);
                break;
            default:
                Seal(end, what, assume);
                break;
        }

        return end;
    }

    private static void Seal(RigLineEnd end, string what, Assumptions assume)
    {
        PortFamilyFacts facts = end.Thread.Facts;
        if (end.Mating.Match == PortMatch.FitsIf && end.Seal is null)
            assume.Caution($"At the {what}, {end.Thread.Name} seals in {end.Port.Name} {end.Mating.Why}; the file does not say which.");
        else if (end.Seal is { } seal && (!facts.Seals.Contains(seal) || !end.Port.Facts.Seals.Contains(seal)))
        {
            assume.Caution(seal == PortSeal.Sealant && !facts.Tapers
                ? $"At the {what}, tape or sealant does not seal a parallel thread: {end.Thread.Name} in {end.Port.Name} wants {facts.How}."
                : $"At the {what}, {end.Thread.Name} in {end.Port.Name} is not sealed by what the file says: it wants {facts.How}.");
        }
    }

    private static PortThread Named(string? name, string path, Shelf shelf) =>
        shelf.TryPort(Resolver.Needed(name, path), out PortThread? port)
            ? port
            : throw new ArgumentException($"'{path}' names a thread that is not in stock: {name}");
}
