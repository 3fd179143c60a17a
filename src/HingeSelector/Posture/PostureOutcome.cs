namespace HingeSelector.Posture;

/// <summary>What the model says of a set-up: a position, or a stated reason why there is none. Never "not a number".</summary>
public abstract record PostureOutcome
{
    private protected PostureOutcome()
    {
    }
}
