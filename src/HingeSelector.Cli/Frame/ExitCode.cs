namespace HingeSelector.Cli.Frame;

/// <summary>What the program tells its caller; the only place where these numbers stand.</summary>
public static class ExitCode
{
    /// <summary>Done; for athletes: each got an answer, stops and holds included.</summary>
    public const int Done = 0;

    /// <summary>Ran, and there are findings.</summary>
    public const int Findings = 1;

    /// <summary>The command line was not understood; nothing was done and nothing is on standard output.</summary>
    public const int Usage = 2;

    /// <summary>A screen, roster, room or standing choice is faulty.</summary>
    public const int BadInput = 3;

    /// <summary>A file of the rules folder is faulty.</summary>
    public const int BadRules = 4;

    /// <summary>With --exit-level: limited today.</summary>
    public const int LimitedToday = 10;

    /// <summary>With --exit-level: questions are not answered.</summary>
    public const int Held = 11;

    /// <summary>With --exit-level: no loaded pull until a clinician answers.</summary>
    public const int Refer = 12;

    /// <summary>With --exit-level: call for help.</summary>
    public const int Emergency = 13;

    /// <summary>A stop or a hold disappears that nobody has acknowledged.</summary>
    public const int StopGone = 20;

    /// <summary>A fault of the program itself.</summary>
    public const int OurFault = 70;
}
