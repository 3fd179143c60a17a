namespace HingeSelector.Body;

/// <summary>The body that the posture model works on, or why there is none.</summary>
public abstract record BodyEstimate
{
    private protected BodyEstimate()
    {
    }
}
