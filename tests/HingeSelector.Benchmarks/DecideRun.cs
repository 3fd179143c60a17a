namespace HingeSelector.Benchmarks;

internal static class DecideRun
{
    public static int Run(string[] args) => 0;
}
