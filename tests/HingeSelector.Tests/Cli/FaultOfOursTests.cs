using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public class FaultOfOursTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_fault_of_the_program_exits_with_seventy_and_shows_where_only_when_asked(bool debug)
    {
        using var error = new MemoryStream();
        var around = new Surroundings(new Broken(), error, Stream.Null) { Clock = TimeProvider.System, WorkingFolder = RepositoryFiles.Root, ProgramFolder = "" };
        string[] line = ["rules", "matrix", .. debug ? new[] { "--debug" } : []];

        Entry.Run(line, around).ShouldBe(ExitCode.OurFault);
        var told = System.Text.Encoding.UTF8.GetString(error.ToArray());
        told.ShouldStartWith("hinge-selector: a fault of the program");
        told.Contains("   at ", StringComparison.Ordinal).ShouldBe(debug);
    }

    private sealed class Broken : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new InvalidOperationException("broken");

        public override void Write(ReadOnlySpan<byte> buffer) => throw new InvalidOperationException("broken");
    }
}
