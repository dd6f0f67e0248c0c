using TagPage.Web.Start.CommandLine;

return await CommandLine.Run(args, Console.Out, Console.Error);
