using Ramwright.Web;

return await BenchServer.RunAsync(args);
