namespace Stockwright.Cooking;

/// <summary>Symmetric, positive definite matrices of three rows and less.</summary>
internal static class SmallMatrix
{
    /// <summary>Inverse by Gauss-Jordan elimination; the diagonal of such a matrix needs no exchange of rows.</summary>
    public static double[,] Inverse(double[,] matrix)
    {
        int count = matrix.GetLength(0);
        double[,] left = (double[,])matrix.Clone();
        double[,] right = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            right[i, i] = 1;
        }

        for (int pivot = 0; pivot < count; pivot++)
        {
            double scale = left[pivot, pivot];
            for (int column = 0; column < count; column++)
            {
                left[pivot, column] /= scale;
                right[pivot, column] /= scale;
            }

            for (int row = 0; row < count; row++)
            {
                double factor = row == pivot ? 0 : left[row, pivot];
                for (int column = 0; column < count && factor != 0; column++)
                {
                    left[row, column] -= factor * left[pivot, column];
                    right[row, column] -= factor * right[pivot, column];
                }
            }
        }

        return right;
    }

    public static double[] Times(double[,] matrix, double[] vector)
    {
        double[] product = new double[vector.Length];
        for (int i = 0; i < vector.Length; i++)
        {
            for (int j = 0; j < vector.Length; j++)
            {
                product[i] += matrix[i, j] * vector[j];
            }
        }

        return product;
    }

    public static double Dot(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }
}
