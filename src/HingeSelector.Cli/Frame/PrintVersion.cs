using System.CommandLine;
using System.CommandLine.Invocation;
using HingeSelector.Recommending;

namespace HingeSelector.Cli.Frame;

/// <summary>Prints name and version, the same that stands in every stamp.</summary>
internal sealed class PrintVersion(Surroundings around) : SynchronousCommandLineAction
{
    public override bool Terminating => true;

    public override int Invoke(ParseResult parseResult)
    {
        around.Output.WriteLine($"hinge-selector {Stamps.Tool}");
        return ExitCode.Done;
    }
}
