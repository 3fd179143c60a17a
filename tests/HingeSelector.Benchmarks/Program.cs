using HingeSelector.Benchmarks;

// Named runs: dotnet run -c Release --project tests/HingeSelector.Benchmarks -- NAME [arguments]
var runs = new Dictionary<string, Func<string[], int>>(StringComparer.Ordinal)
{
    ["agree"] = AgreeRun.Run,
    ["decide"] = DecideRun.Run,
    ["explain"] = ExplainRun.Run,
    ["demo"] = DemoRun.Run,
    ["first-choices"] = FirstChoicesRun.Run,
    ["mutate"] = MutateRun.Run,
    ["population"] = PopulationRun.Run,
    ["rank"] = RankRun.Run,
};
if (args.Length > 0 && runs.TryGetValue(args[0], out var run))
    return run(args[1..]);
Console.Error.WriteLine("Name a run: " + string.Join(", ", runs.Keys.Order(StringComparer.Ordinal)));
return 2;
