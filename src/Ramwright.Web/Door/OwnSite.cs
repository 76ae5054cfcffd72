using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Ramwright.Web.Door;

/// <summary>Keeps pages of other sites, open in the same browser, away from the bench.</summary>
internal static class OwnSite
{
    /// <summary>Refuses what a page of another site sends: browsers name the site that a form or a socket comes from.</summary>
    public static void UseOwnSiteOnly(this WebApplication app) => app.Use((context, next) =>
    {
        HttpRequest request = context.Request;
        string origin = request.Headers.Origin.ToString();
        if (origin.Length == 0 || origin.Equals($"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase))
            return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    });

    /// <summary>The names this machine is called by, for a bench that others may use.</summary>
    public static IReadOnlyList<string> Names() =>
    [
        "127.0.0.1", "localhost", "[::1]", Environment.MachineName, Environment.MachineName + ".local",
        .. Addresses().Select(a => a.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{a}]" : a.ToString()),
    ];

    /// <summary>The addresses others reach it at.</summary>
    public static IEnumerable<IPAddress> Addresses() => NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses).Select(u => u.Address)
        .Where(a => a.AddressFamily == AddressFamily.InterNetwork || (a.AddressFamily == AddressFamily.InterNetworkV6 && !a.IsIPv6LinkLocal));
}
