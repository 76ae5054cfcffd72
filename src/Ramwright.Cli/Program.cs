using Ramwright.Cli;

return RamwrightApp.Run(args);
