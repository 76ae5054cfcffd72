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
    private readonly SemaphoreSlim _turn = new(1, 1);

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
    public async Task Do(Func<OpenPress, PressNow> what)
    {
        await _turn.WaitAsync();
        try
        {
            await Task.Run(() => what(press));
        }
        finally
        {
            _turn.Release();
        }
    }
}
