namespace HingeSelector.Rules.Evaluating;

/// <summary>One decision in its two stages.</summary>
public interface IRuleSession
{
    /// <summary>Decides everything that does not read the chosen set-up.</summary>
    Evaluation First();

    /// <summary>Decides the rest, after the chosen set-ups have been filled in; adds to the same evaluation.</summary>
    void Second();
}
