using Ramwright.Stock;
using Ramwright.Web.Forms;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Bench;

/// <summary>
/// What a person does to a press, one thing after another in the order it was done, off the page's own thread: typing never waits for
/// the answer.
/// </summary>
#pragma warning disable CA1001 // a SemaphoreSlim whose wait handle nobody asks for holds nothing that must be given back
public sealed class EditDesk(OpenPress press)
{
    private readonly Lock _gate = new();
    private Task _last = Task.CompletedTask;

    public OpenPress Press => press;

    public Shelf Shelf => press.Now.Read.Press.Shelf;

    /// <summary>Sets one value.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="value">As typed.</param>
    /// <param name="stroke">What belongs together as one step back.</param>
    /// <param name="stillWanted">Asked when its turn comes; false where a newer value is on its way already.</param>
    public Task Set(string path, string value, object? stroke = null, Func<bool>? stillWanted = null) =>
        Do(p => stillWanted?.Invoke() == false ? p.Now : p.Set(path, value, stroke));

    public Task Remove(string path) => Do(p => p.Remove(path));

    public Task SetKind(string path, string kind) => Do(p => p.SetKind(path, kind, PressForm.Foreign(p.Now, path, kind)));

    /// <summary>Does something to the press when its turn comes.</summary>
    public Task Do(Func<OpenPress, PressNow> what)
    {
        lock (_gate)
            return _last = After(_last, what);
    }

    private async Task After(Task last, Func<OpenPress, PressNow> what)
    {
        // what went wrong before is told to whoever asked for it
        await last.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await Task.Run(() => what(press));
    }
}
