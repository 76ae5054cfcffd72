using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Web.Forms;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Bench;

/// <summary>What the fields of a form work on. The work is done off the page's own thread, so that typing never waits for it.</summary>
internal sealed class EditDesk(OpenPress press)
{
    public OpenPress Press => press;

    public Shelf Shelf => press.Now.Read.Press.Shelf;

    public UnitSystem Units { get; set; }

    public Task Set(string path, string value, object? stroke = null) => Task.Run(() => press.Set(path, value, stroke));

    public Task Remove(string path) => Task.Run(() => press.Remove(path));

    public Task SetKind(string path, string kind) => Task.Run(() => press.SetKind(path, kind, PressForm.Foreign(press.Now, path, kind)));
}
