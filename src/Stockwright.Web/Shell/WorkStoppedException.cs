namespace Stockwright.Web.Shell;

/// <summary>
/// Work was stopped, because its time was up or nobody waits for it any more. Thrown by what works for a page in the place of
/// <see cref="OperationCanceledException"/>, for the renderer takes a cancelled task for a page that is done, and answers 200 with half of it.
/// </summary>
internal sealed class WorkStoppedException : Exception
{
    public WorkStoppedException()
        : base("The work was stopped.")
    {
    }

    public WorkStoppedException(string message)
        : base(message)
    {
    }

    public WorkStoppedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Does work that a token can end.</summary>
    /// <exception cref="WorkStoppedException">The token ended it.</exception>
    public static T Run<T>(Func<T> work, CancellationToken cancellationToken)
    {
        try
        {
            return work();
        }
        catch (OperationCanceledException stopped) when (cancellationToken.IsCancellationRequested)
        {
            throw new WorkStoppedException(stopped.Message, stopped);
        }
    }
}
