using HingeSelector.Cli.Frame;

return Entry.Run(args, Surroundings.OfProcess());
