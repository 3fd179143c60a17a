namespace HingeSelector.Body;

/// <summary>Whether the pelvis was kept still while hip flexion was measured.</summary>
public enum PelvisHeld
{
    /// <summary>Not noted; read like <see cref="No"/>, the cautious way.</summary>
    Unknown,

    /// <summary>A second hand or the other thigh held it.</summary>
    Yes,

    /// <summary>It could tilt, so part of the reading is the low back.</summary>
    No,
}
