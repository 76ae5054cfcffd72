System.Console.WriteLine("not built yet");
