using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Choosing;

/// <summary>One moving line on standard error while a long roster is answered; silent unless a person looks at it.</summary>
internal sealed class Progress(Surroundings around, int all)
{
    private const int LongRoster = 50;
    private const int Every = 10;

    private readonly bool _shown = around.ErrorIsTerminal && all >= LongRoster;
    private int _done;

    public void Step()
    {
        if (_shown && ++_done % Every == 0)
            around.Error.Write($"\r{_done} of {all} athletes");
    }

    public void Finish()
    {
        if (_shown)
            around.Error.Write($"\r{new string(' ', $"{all} of {all} athletes".Length)}\r");
    }
}
