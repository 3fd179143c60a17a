namespace HingeSelector.Cli.Frame;

/// <summary>Waits until a time has passed or somebody presses Ctrl+C; from the first wait on Ctrl+C ends the waiting and not the process.</summary>
internal sealed class Interruption
{
    private readonly object _gate = new();
    private bool _listens;
    private bool _asked;

    /// <summary>Waits.</summary>
    /// <returns>Whether to go on; false after Ctrl+C.</returns>
    public bool Pause(TimeSpan time)
    {
        lock (_gate)
        {
            if (!_listens)
                Console.CancelKeyPress += OnPressed;
            _listens = true;
            if (!_asked)
                Monitor.Wait(_gate, time);
            return !_asked;
        }
    }

    private void OnPressed(object? sender, ConsoleCancelEventArgs pressed)
    {
        pressed.Cancel = true;
        lock (_gate)
        {
            _asked = true;
            Monitor.PulseAll(_gate);
        }
    }
}
